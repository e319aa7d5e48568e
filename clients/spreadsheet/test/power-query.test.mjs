// There is no interpreter of this language here: the text is only parsed, and what it names is looked up in the contract.
import assert from 'node:assert/strict';
import {readFileSync} from 'node:fs';
import {test} from 'node:test';
import parser from '@microsoft/powerquery-parser';

const {DefaultSettings, TaskUtils} = parser;
const text = readFileSync(new URL('../power-query/footwell.pq', import.meta.url), 'utf8');
const parse = async (source) => TaskUtils.isParseStageOk(await TaskUtils.tryLexParse(DefaultSettings, source));

test('the query is well formed', async () => {
  assert.equal(await parse(text), true);
});

test('a query that is not would be found out', async () => {
  assert.equal(await parse(text.replace('in\n    Typed', 'in')), false);
  assert.equal(await parse(text.replace('=> ', '> ')), false);
});

test('its addresses are in the contract', () => {
  const contract = readFileSync(new URL('../../../openapi/footwell-v1.yaml', import.meta.url), 'utf8');
  for (const path of ['/v1/sound-level', '/v1/sound-level/batch']) assert.ok(contract.includes(`\n  ${path}:\n`), path);
  assert.ok(text.includes('AskRows("sound-level"'));
});
