/**
 * Footwell in a web spreadsheet. Paste this into the spreadsheet's script editor, set SERVICE, save;
 * then =FOOTWELL("sound-level"; "level_db_spl"; A2:B5) works in any cell.
 *
 * The spreadsheet's maker calls the service, not your computer: its address must be reachable from
 * the internet, so localhost does not work.
 */
var SERVICE = 'https://footwell.example';

/**
 * Asks one question and gives one value.
 *
 * @param {string} calculation Such as "sound-level".
 * @param {string} field The value wanted, by its dotted path, such as "level_db_spl" or "verdict".
 * @param {...*} values Ranges of two columns, names and values; or names and values in turn.
 * @return The value; a problem as a short sentence.
 * @customfunction
 */
function FOOTWELL(calculation, field, ...values) {
  const query = pairs_(values).map(([name, value]) => encodeURIComponent(name) + '=' + encodeURIComponent(value));
  query.push('field=' + encodeURIComponent(field), 'errors=text');
  const answer = fetch_('/v1/' + encodeURIComponent(calculation) + '?' + query.join('&'), {});
  return answer.failed || typed_(answer.text);
}

/**
 * Asks one question for each row of a table, all in one call.
 *
 * @param {string} calculation Such as "sound-level".
 * @param {string} fields The values wanted, in one text: "level_db_spl, verdict".
 * @param {Array<Array>} table The first row names the fields of the request; empty cells are left out.
 * @return One row for each row of the table; a problem as a short sentence in the first column.
 * @customfunction
 */
function FOOTWELL_ROWS(calculation, fields, table) {
  const wanted = fields.split(',').map((field) => field.trim());
  const names = table[0];
  const rows = table.slice(1);
  const asked = rows.filter(filled_);
  if (asked.length === 0) return [['']];
  const lines = asked.map((row) => JSON.stringify(nested_(names.map((name, i) => [name, row[i]]))) + '\n');
  const answer = fetch_('/v1/' + encodeURIComponent(calculation) + '/batch',
      {method: 'post', contentType: 'application/x-ndjson', payload: lines.join('')});
  if (answer.failed) return [[answer.failed]];
  if (answer.status !== 200) return [[JSON.parse(answer.text).detail]];
  const answers = answer.text.trim().split('\n').map((line) => JSON.parse(line));
  return rows.map((row) => (filled_(row) ? cells_(answers.shift(), wanted) : wanted.map(() => '')));
}

function fetch_(path, options) {
  try {
    const response = UrlFetchApp.fetch(SERVICE.replace(/\/$/, '') + path, {...options, muteHttpExceptions: true});
    return {status: response.getResponseCode(), text: response.getContentText()};
  } catch (unreachable) {
    return {failed: 'No answer from ' + SERVICE + '. Is the service running, and is it reachable from the internet?'};
  }
}

function pairs_(values) {
  const pairs = [];
  for (let i = 0; i < values.length; i++) {
    if (Array.isArray(values[i])) pairs.push(...values[i].map((row) => [row[0], row[1]]));
    else pairs.push([values[i], values[++i]]);
  }
  return pairs.filter(([name, value]) => name !== '' && !empty_(value));
}

/** {a: {b: [4]}} from [['a.b.0', 4]]. */
function nested_(pairs) {
  const root = {};
  for (const [name, value] of pairs) {
    if (name === '' || empty_(value)) continue;
    const path = name.split('.');
    let here = root;
    path.forEach((step, i) => {
      const last = i === path.length - 1;
      here[step] = last ? value : here[step] || (/^\d+$/.test(path[i + 1]) ? [] : {});
      here = here[step];
    });
  }
  return root;
}

function cells_(answer, wanted) {
  if (!answer.result) {
    const fault = (answer.errors || [answer]).map((error) => error.detail).join(' ');
    return wanted.map((_, i) => (i === 0 ? fault : ''));
  }
  return wanted.map((field) => {
    const start = field.split('.')[0] in answer.result ? answer.result : answer;
    const found = field.split('.').reduce((here, step) => here?.[step], start);
    return found === undefined ? '' : typeof found === 'object' ? JSON.stringify(found) : found;
  });
}

/** A number as a number: the answer has a decimal point whatever the sheet's language is. */
function typed_(text) {
  return /^-?\d+(\.\d+)?([eE][-+]?\d+)?$/.test(text) ? Number(text) : text;
}

function filled_(row) {
  return row.some((value) => !empty_(value));
}

function empty_(value) {
  return value === '' || value === null || value === undefined;
}
