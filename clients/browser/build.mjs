// One file that a page loads as it is: dist/footwell-booking.js.
import { readFile } from 'node:fs/promises';
import { build } from 'esbuild';

/** Styles are a text to the one who minifies programs: their comments and blanks go here. */
const shortStyles = {
  name: 'short-styles',
  setup: ({ onLoad }) =>
    onLoad({ filter: /\/src\/style\.ts$/ }, async ({ path }) => {
      const source = await readFile(path, 'utf8');
      const short = source.replace(/\/\*[^]*?\*\//g, '').replace(/\s+/g, ' ').replace(/ ?([{};,]) ?|(:) /g, '$1$2').replaceAll(';}', '}');
      return { contents: short, loader: 'ts' };
    }),
};

await build({
  entryPoints: ['src/index.ts'],
  outfile: 'dist/footwell-booking.js',
  bundle: true,
  minify: true,
  format: 'esm',
  target: 'es2022',
  legalComments: 'none',
  plugins: [shortStyles],
});
