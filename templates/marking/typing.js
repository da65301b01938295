'use strict';
(function () {
  var data = JSON.parse(document.getElementById('sheets').textContent);
  var words = data.words;
  var at = 0;
  var typed = {};

  function element(id) { return document.getElementById(id); }

  // What was typed for a sheet, one text an answer.
  function answersOf(sheet) {
    if (!typed[sheet.code]) typed[sheet.code] = data.columns.map(function () { return ''; });
    return typed[sheet.code];
  }

  // Some browsers refuse storage to a page from a file; then what is typed lasts as long as the page.
  function keep() {
    try { localStorage.setItem(data.storage, JSON.stringify(typed)); } catch (refused) { return; }
  }
  function recall() {
    try { typed = JSON.parse(localStorage.getItem(data.storage)) || {}; } catch (refused) { typed = {}; }
  }

  var RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻';
  function plain(text) {
    return text
      .replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻]+/g, function (raised) { return '^' + raised.split('').map(function (sign) { return '0123456789+-'.charAt(RAISED.indexOf(sign)); }).join(''); })
      .normalize('NFKC').replace(/[−‐‑‒–—]/g, '-').trim();
  }

  var PREFIX = { '': 0, m: -3, c: -2, k: 3, 'μ': -6, u: -6 };
  function plainUnit(unit) { return unit.replace(/ohms?/gi, 'Ω').replace(/met(er|re)s?/gi, 'm').replace(/[\s·.*-]/g, ''); }

  // Powers of ten between a unit as it is typed and the one that is asked for; nothing where they are not of a kind.
  function tensBetween(unit, asked) {
    var one = plainUnit(plain(unit));
    var other = plainUnit(asked);
    if (one === '' || one === '!' || one === other) return 0;
    var short = /^([mckuμ]?)(m|Ω)$/;
    var a = short.exec(one);
    var b = short.exec(other);
    return a && b && a[2] === b[2] ? PREFIX[a[1]] - PREFIX[b[1]] : null;
  }

  var NUMBER = /^([+-]?)\s*(\d[\d ]*(?:[.,][\d ]*)?|[.,]\d+)(?:\s*e([+-]?\d+)|\s*[×x·*]\s*10(?:\s*\^\s*\(?\s*([+-]?\d+)\s*\)?|([+-]\d+)))?\s*(.*)$/i;

  // {value} in the unit asked for, {says} where there is none.
  function read(text, column) {
    var so = plain(text);
    if (so === '') return { says: '' };
    if (so === '-' || /^[x×]$/i.test(so)) return { says: so };
    var found = NUMBER.exec(so.replace(/\s*±\s*[\d.,]+/, ''));
    var foreign = data.decimal === 'comma' ? '.' : ',';
    if (!found || found[2].indexOf(foreign) >= 0) return { says: words.unreadable };
    var tens = tensBetween(found[6], column.unit);
    var power = Number(found[3] || found[4] || found[5] || 0) + (tens || 0);
    return { value: Number((found[1] === '-' ? '-' : '') + found[2].replace(/ /g, '').replace(',', '.') + 'e' + power), otherUnit: tens === null };
  }

  function power(base, exponent) {
    var out = base;
    for (var i = 1; i < exponent; i++) out *= base;
    return out;
  }

  // Every value of a sheet, with the figures typed for earlier answers in place.
  function work(sheet, own) {
    var values = {};
    Object.keys(sheet.readings).forEach(function (id) { values[id] = sheet.readings[id]; });
    function value(id, row, tens) {
      var column = values[id];
      var one = column.length === 1 ? column[0] : column[row];
      return tens < 0 ? one / Number('1e' + -tens) : one * Number('1e' + tens);
    }
    function put(id, table, make) {
      var rows = table === '' ? 1 : sheet.readings[data.tables[table]].length;
      values[id] = [];
      for (var row = 0; row < rows; row++) {
        var mine = own[id] && own[id][row];
        exact[id + ' ' + row] = make(row);
        values[id].push(mine === undefined ? exact[id + ' ' + row] : mine);
      }
    }
    function sum(list) { return list.reduce(function (a, b) { return a + b; }, 0); }
    function mean(id) { return sum(values[id]) / values[id].length; }
    function line(x, y) {
      var dx = values[x].map(function (one) { return one - mean(x); });
      var slope = sum(dx.map(function (d, i) { return d * values[y][i]; })) / sum(dx.map(function (d) { return d * d; }));
      var through = sum(values[x].map(function (one, i) { return one * values[y][i]; })) / sum(values[x].map(function (one) { return one * one; }));
      return { slope: slope, intercept: mean(y) - slope * mean(x), 'slope through origin': through };
    }
    var exact = {};
    window.slidewireForms[sheet.form](value, put, mean, line, power);
    return exact;
  }

  function inside(value, low, high) {
    var slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
    return value >= low - slack && value <= high + slack;
  }

  // A first look at each answer of a sheet: what is said beside it.
  function looks(sheet, texts) {
    var own = {};
    var whole = true;
    // After a wrong value in a table the rows that are not typed may have the same slip in them.
    var shaken = false;
    var entries = data.columns.map(function (column, i) { return read(texts[i], column); });
    data.columns.forEach(function (column, i) {
      if (entries[i].value !== undefined) (own[column.id] = own[column.id] || [])[column.row] = entries[i].value;
    });
    var exact = work(sheet, own);
    return data.columns.map(function (column, i) {
      var entry = entries[i];
      var before = whole;
      if (entry.value === undefined) whole = false;
      if (entry.value === undefined) return entry.says;
      var middle = exact[column.id + ' ' + column.row];
      var key = sheet.key[i];
      var beside = sheet.beside[i];
      var spread = before ? (column.relative ? [middle * beside[0], middle * beside[1]].sort(function (a, b) { return a - b; }) : beside) : [(key[0] - key[1]) / 2, (key[1] - key[0]) / 2];
      var fits = inside(entry.value, middle + spread[0], middle + spread[1]) || inside(entry.value, key[0], key[1]);
      var says = fits ? words.right : shaken ? words.open : words.wrong;
      if (!fits && column.inTable) shaken = true;
      return says + (entry.otherUnit ? ' (?)' : '');
    });
  }

  function isDone(sheet) { return answersOf(sheet).every(function (text) { return text.trim() !== ''; }); }

  function tell() {
    var sheet = data.sheets[at];
    looks(sheet, answersOf(sheet)).forEach(function (says, i) { element('says-' + i).textContent = says; });
    var done = data.sheets.filter(isDone).length;
    element('done').textContent = words.done.replace('{done}', done).replace('{all}', data.sheets.length);
    var option = element('student').options[at];
    option.textContent = (isDone(sheet) ? '✓ ' : '') + sheet.roll + ' ' + sheet.name;
    element('text').value = csv();
  }

  function show(place, answer) {
    at = Math.max(0, Math.min(data.sheets.length - 1, place));
    var sheet = data.sheets[at];
    element('student').value = String(at);
    element('code').textContent = sheet.code;
    answersOf(sheet).forEach(function (text, i) { element('answer-' + i).value = text; });
    tell();
    var input = element('answer-' + (answer || 0));
    input.focus();
    input.select();
  }

  function live(cell) { return /^[=+\-@\t\r]/.test(cell) && !/^-?\d+([.,]\d+)?$/.test(cell) && cell !== '-'; }
  function csv() {
    var delimiter = data.decimal === 'comma' ? ';' : ',';
    var rows = [data.heads].concat(data.sheets.map(function (sheet) { return [sheet.roll, sheet.name, sheet.code].concat(answersOf(sheet)); }));
    return rows.map(function (cells) {
      return cells.map(function (cell) {
        var dead = live(cell) ? "'" + cell : cell;
        return /["\r\n]/.test(dead) || dead.indexOf(delimiter) >= 0 ? '"' + dead.replace(/"/g, '""') + '"' : dead;
      }).join(delimiter);
    }).join('\r\n') + '\r\n';
  }

  function save() {
    var link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob(['\ufeff' + csv()], { type: 'text/csv' }));
    link.download = 'answers.csv';
    link.click();
    setTimeout(function () { URL.revokeObjectURL(link.href); }, 1000);
  }

  function go(place, by) {
    var next = place + by;
    if (next < 0) return at > 0 ? show(at - 1, data.columns.length - 1) : undefined;
    if (next >= data.columns.length) return at + 1 < data.sheets.length ? show(at + 1, 0) : element('save').focus();
    element('answer-' + next).focus();
    element('answer-' + next).select();
  }

  function pressed(place, event) {
    var input = event.target;
    if (event.key === 'Enter' || event.key === 'ArrowDown') { event.preventDefault(); go(place, 1); }
    else if (event.key === 'ArrowUp') { event.preventDefault(); go(place, -1); }
    else if (event.key === 'PageDown') { event.preventDefault(); show(at + 1, place); }
    else if (event.key === 'PageUp') { event.preventDefault(); show(at - 1, place); }
    else if (event.key === ' ' && data.units === 'typed' && /\d$/.test(input.value) && input.selectionStart === input.value.length) {
      event.preventDefault();
      input.value += ' ' + data.columns[place].unit;
      changed(place, input);
    }
  }

  function changed(place, input) {
    answersOf(data.sheets[at])[place] = input.value;
    keep();
    tell();
  }

  recall();
  data.sheets.forEach(function (sheet, i) { element('student').add(new Option((isDone(sheet) ? '✓ ' : '') + sheet.roll + ' ' + sheet.name, String(i))); });
  element('student').addEventListener('change', function (event) { show(Number(event.target.value), 0); });
  data.columns.forEach(function (column, i) {
    var input = element('answer-' + i);
    input.addEventListener('keydown', function (event) { pressed(i, event); });
    input.addEventListener('input', function () { changed(i, input); });
  });
  element('save').addEventListener('click', save);
  window.slidewireLooks = looks;
  window.slidewireSheets = data.sheets;
  show(0, 0);
})();
