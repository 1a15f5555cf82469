#!/usr/bin/env node
'use strict';

// Runs on any Node, however old: it finds one that is new enough and hands the command line on. Plain CommonJS for that reason.

var path = require('path');
var url = require('url');

var NEEDED = [22, 18];
var MAIN = path.join(__dirname, '..', 'src', 'cli', 'main.ts');

function isNewEnough(version) {
  var parts = version.replace(/^v/, '').split('.').map(Number);
  return parts[0] > NEEDED[0] || (parts[0] === NEEDED[0] && parts[1] >= NEEDED[1]);
}

/** Program file of the Node that was installed with this package for this platform, or null. */
function installedNode() {
  var name = 'node-' + (process.platform === 'win32' ? 'win' : process.platform) + '-' + process.arch;
  try {
    var folder = path.dirname(require.resolve(name + '/package.json'));
    var file = path.join(folder, 'bin', process.platform === 'win32' ? 'node.exe' : 'node');
    return require('fs').existsSync(file) ? file : null;
  } catch (error) {
    return null;
  }
}

function runUnder(node) {
  var child = require('child_process').spawn(node, [__filename].concat(process.argv.slice(2)), {
    stdio: 'inherit',
    env: Object.assign({}, process.env, { SEAMLINE_HANDED_OVER: '1' }),
  });
  var signals = ['SIGINT', 'SIGTERM', 'SIGHUP'];
  signals.forEach(function (signal) {
    // A terminal sends its signals to both; others reach this process alone, so they are passed on.
    process.on(signal, function () {
      child.kill(signal);
    });
  });
  child.on('error', function (error) {
    process.stderr.write('seamline: ' + node + ' could not be started (' + error.code + ').\n');
    process.exit(1);
  });
  child.on('exit', function (code, signal) {
    if (signal === null) process.exit(code);
    signals.forEach(function (each) {
      process.removeAllListeners(each);
    });
    process.kill(process.pid, signal);
  });
}

if (isNewEnough(process.version)) {
  // Keeps the compiled form of the program between runs; half of a run that has nothing to do was compiling.
  require('module').enableCompileCache();
  import(url.pathToFileURL(require('./joined-program.cjs').joinedMain() || MAIN).href).catch(function (error) {
    process.stderr.write('seamline could not be started: ' + String(error && error.message).split('\n')[0] + '\n');
    process.exitCode = 1;
  });
} else {
  // Handed over once already: the Node that came with the package is too old itself.
  var node = process.env.SEAMLINE_HANDED_OVER === '1' ? null : installedNode();
  if (node === null) {
    process.stderr.write(
      'seamline needs Node ' +
        NEEDED.join('.') +
        ' or newer; this is ' +
        process.version +
        ', and no newer one came with the package for ' +
        process.platform +
        ' ' +
        process.arch +
        '. Install a newer Node, or run "npm ci" without leaving out optional packages.\n',
    );
    process.exit(1);
  } else {
    runUnder(node);
  }
}
