'use strict';
// A program that talks to a language server over its standard streams. Every wait has an end.
const { spawn } = require('node:child_process');
const { pathToFileURL } = require('node:url');
const protocol = require('vscode-languageserver-protocol/node');

const ANSWER = 60_000;
const WHOLE = 240_000;

setTimeout(() => fail(new Error(`not through after ${WHOLE} ms`)), WHOLE).unref();

function fail(error) {
  console.error(error.stack ?? String(error));
  process.exit(1);
}

/** A promise that fails where nothing comes. */
function within(what, promise) {
  let timer;
  const late = new Promise((_, reject) => {
    timer = setTimeout(() => reject(new Error(`nothing came: ${what}`)), ANSWER);
  });
  return Promise.race([promise, late]).finally(() => clearTimeout(timer));
}

class Client {
  constructor(command, folder) {
    this.process = spawn(command[0], command.slice(1), { cwd: folder, stdio: ['pipe', 'pipe', 'inherit'] });
    this.process.on('error', fail);
    this.process.stdin.on('error', () => {}); // a server that is gone gives no answer, which is noticed
    this.ended = new Promise(resolve => this.process.on('exit', resolve));
    process.on('exit', () => this.process.kill('SIGKILL'));
    this.connection = protocol.createProtocolConnection(
      new protocol.StreamMessageReader(this.process.stdout),
      new protocol.StreamMessageWriter(this.process.stdin));
    this.connection.onError(([error]) => fail(error));
    this.registered = [];
    this.connection.onRequest(protocol.RegistrationRequest.type, params => {
      this.registered.push(...params.registrations);
    });
    this.shown = [];
    this.look = () => {};
    this.connection.onNotification(protocol.PublishDiagnosticsNotification.type, params => {
      this.shown.push(params);
      this.look();
    });
    this.connection.listen();
  }

  ask(type, params) {
    return within(type.method, this.connection.sendRequest(type, params));
  }

  notify(type, params) {
    return within(type.method, this.connection.sendNotification(type, params));
  }

  /** Sends something, and waits for diagnostics that are shown after it. */
  async shownAfter(type, params, wanted) {
    this.shown.length = 0;
    await this.notify(type, params);
    const found = new Promise(resolve => {
      this.look = () => {
        const one = this.shown.find(wanted);
        if (one) {
          resolve(one.diagnostics);
        }
      };
      this.look();
    });
    return within(`diagnostics after ${type.method}`, found);
  }

  /** Ends the server as the protocol says, and gives its exit code. */
  async end() {
    await this.ask(protocol.ShutdownRequest.type);
    await this.notify(protocol.ExitNotification.type);
    return within('the end of the server', this.ended);
  }
}

const uriOf = file => pathToFileURL(file).href;

/** Where an offset is, in lines and UTF-16 units from 0. */
function positionOf(text, offset) {
  const before = text.slice(0, offset);
  return { line: before.split('\n').length - 1, character: offset - (before.lastIndexOf('\n') + 1) };
}

/** A text in which a bar is the cursor: the text without it, and where it was. */
function atBar(marked) {
  const offset = marked.indexOf('|');
  if (offset < 0 || marked.indexOf('|', offset + 1) >= 0) {
    throw new Error(`one cursor is wanted in ${marked}`);
  }
  return { text: marked.replace('|', ''), position: positionOf(marked, offset) };
}

module.exports = { Client, atBar, fail, uriOf };
