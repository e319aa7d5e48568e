/**
 * Footwell in a web spreadsheet. Paste this into the spreadsheet's script editor, set SERVICE, save;
 * then =FOOTWELL("sound-level"; "level_db_spl"; A2:B5) works in any cell.
 *
 * The spreadsheet's maker calls the service, not your computer: its address must be reachable from
 * the internet, so localhost does not work.
 */
var SERVICE = 'https://footwell.example';
var TYPES = ['text/plain', 'application/json', 'application/x-ndjson'];  // of the service's answers

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
  const answer = fetch_(encodeURIComponent(calculation) + '?' + query.join('&'), {});
  return answer.failed || typed_(answer.text);
}

/**
 * Asks one question for each row of a table, all in one call.
 *
 * @param {string} calculation Such as "sound-level".
 * @param {string} fields The values wanted, in one text, "level_db_spl, verdict", or in a range of cells.
 * @param {Array<Array>} table The first row names the fields of the request; empty cells are left out.
 * @return One row for each row of the table; a problem as a short sentence in the first column.
 * @customfunction
 */
function FOOTWELL_ROWS(calculation, fields, table) {
  const wanted = [fields].flat(2).join().split(',').map((field) => field.trim()).filter((field) => field !== '');
  const [names, ...rows] = Array.isArray(table) ? table : [[table]];
  if (wanted.length === 0 || rows.length === 0) return [['Name the values wanted, and a table with names in its first row.']];
  const asked = rows.filter(filled_).map((row) => JSON.stringify(nested_(names.map((name, i) => [String(name), row[i]]))));
  if (asked.length === 0) return [['']];
  const answer = fetch_(encodeURIComponent(calculation) + '/batch', post_('application/x-ndjson', asked.map((line) => line + '\n').join('')));
  if (answer.failed) return [[answer.failed]];
  // A line is whole with its end: what an answer that broke off has last is none.
  const answers = answer.text.split('\n').slice(0, -1).map((line) => JSON.parse(line));
  if (answers.length < asked.length) return [['The answer of the service broke off; let the sheet calculate again.']];
  const unknown = wanted.map((field) => unknown_(calculation, field, asked, answers));
  return rows.map((row) => (filled_(row) ? cells_(answers.shift(), wanted, unknown) : wanted.map(() => '')));
}

/** What the service says of a value that no row has: a sentence if it does not know it. */
function unknown_(calculation, field, asked, answers) {
  const first = answers.findIndex((answer) => answer.result);
  if (first < 0 || answers.some((answer) => answer.result && found_(answer, field) !== undefined)) return '';
  const answer = fetch_(encodeURIComponent(calculation) + '?field=' + encodeURIComponent(field) + '&errors=text', post_('application/json', asked[first]));
  return answer.failed || answer.text;
}

function post_(contentType, payload) {
  return {method: 'post', contentType, payload};
}

/** The text of the service's answer; what comes from elsewhere, such as the page of a proxy, is a problem. */
function fetch_(path, options) {
  try {
    const response = UrlFetchApp.fetch(SERVICE.replace(/\/$/, '') + '/v1/' + path, {...options, muteHttpExceptions: true});
    const text = response.getContentText();
    const headers = Object.entries(response.getHeaders()).map(([name, value]) => name.toLowerCase() + ': ' + value).join('\n');
    const type = (/^content-type: *([^;\s]*)/m.exec(headers) || [])[1];
    if (type === 'application/problem+json') return {failed: JSON.parse(text).detail};
    if (response.getResponseCode() === 200 && TYPES.includes(type)) return {text};
    return {failed: SERVICE + ' does not answer as the service does (status ' + response.getResponseCode() + ', ' + type + ').'};
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

function cells_(answer, wanted, unknown) {
  if (!answer.result) {
    const fault = (answer.errors || [answer]).map((error) => error.detail).join(' ');
    return wanted.map((_, i) => (i === 0 ? fault : ''));
  }
  return wanted.map((field, i) => {
    const found = found_(answer, field);
    return found === undefined ? unknown[i] : typeof found === 'object' ? JSON.stringify(found) : found;
  });
}

function found_(answer, field) {
  const start = field.split('.')[0] in answer.result ? answer.result : answer;
  return field.split('.').reduce((here, step) => here?.[step], start);
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
