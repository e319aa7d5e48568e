// Each file in src/words is a language; this lists them, so that a further one is one file.
import { readdirSync, writeFileSync } from 'node:fs';

const names = readdirSync('src/words').map((file) => file.replace(/\.ts$/, '')).sort();
const imports = names.map((name) => `import ${name} from './words/${name}.js';\n`).join('');
writeFileSync('src/languages.ts', `${imports}\nexport const languages = { ${names.join(', ')} };\n`);
