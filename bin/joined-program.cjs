'use strict';

// The program joined into a few files, so that a start opens ten files and not seven hundred. Plain CommonJS: `seamline.cjs` reads it.
// It stands only for the very sources it was joined from; after any change of them the program runs from its sources.

var crypto = require('crypto');
var fs = require('fs');
var path = require('path');

var ROOT = path.join(__dirname, '..');
/** Where the joined program lies. */
var FOLDER = path.join(ROOT, '.cache', 'program');
/** Names the state of the sources that it was joined from. */
var STAMP = 'joined-from.txt';

/** State of the sources: every file's path, size and time. */
function stateOfSources() {
  var hash = crypto.createHash('sha256');
  function add(file) {
    var stat = fs.statSync(file);
    hash.update([path.relative(ROOT, file), stat.size, stat.mtimeMs].join(' ') + '\n');
  }
  function walk(folder) {
    fs.readdirSync(folder, { withFileTypes: true }).forEach(function (each) {
      var place = path.join(folder, each.name);
      if (each.isDirectory()) walk(place);
      else add(place);
    });
  }
  walk(path.join(ROOT, 'src'));
  walk(path.join(ROOT, 'bin'));
  add(path.join(ROOT, 'package-lock.json'));
  return hash.digest('hex');
}

/** Main file of the joined program; null where there is none, or one of other sources. */
function joinedMain() {
  try {
    if (fs.readFileSync(path.join(FOLDER, STAMP), 'utf8') !== stateOfSources()) return null;
    return path.join(FOLDER, 'main.mjs');
  } catch (error) {
    return null;
  }
}

module.exports = { FOLDER: FOLDER, ROOT: ROOT, STAMP: STAMP, joinedMain: joinedMain, stateOfSources: stateOfSources };
