'use strict';
// The linter's language server by a client of another maker: node server.js <folder> <command>…
// The folder has sites/example.yaml, which keeps every rule, and device-types.yaml with eight-way and four-way.
const assert = require('node:assert/strict');
const fs = require('node:fs');
const path = require('node:path');
const protocol = require('vscode-languageserver-protocol/node');
const { TextDocument } = require('vscode-languageserver-textdocument');
const { Client, atBar, fail, uriOf } = require('./client');

const [folder, ...command] = process.argv.slice(2);
const site = fs.readFileSync(path.join(folder, 'sites', 'example.yaml'), 'utf8');
const types = path.join(folder, 'device-types.yaml');
const uri = uriOf(path.join(folder, 'sites', 'example.yaml'));
const client = new Client(command, folder);
let version = 0;
let text = '';

function change(from, to) {
  assert(site.includes(from), from);
  return site.replace(from, to);
}

/** Opens the text or types it anew, and gives what is shown of it. */
async function type(next) {
  text = next;
  version++;
  const shown = version === 1
    ? await client.shownAfter(protocol.DidOpenTextDocumentNotification.type,
      { textDocument: { uri, languageId: 'yaml', version, text } }, isOfText)
    : await client.shownAfter(protocol.DidChangeTextDocumentNotification.type,
      { textDocument: { uri, version }, contentChanges: [{ text }] }, isOfText);
  return checked(shown);
}

const isOfText = params => params.uri === uri && params.version === version;

function checked(diagnostics) {
  diagnostics.forEach(one => assert(protocol.Diagnostic.is(one), JSON.stringify(one)));
  return diagnostics;
}

/** Writes a file, as another program does, and gives the rules of what is then shown of the text. */
async function writeOnDisk(file, content) {
  fs.writeFileSync(file, content);
  const changes = [{ uri: uriOf(file), type: protocol.FileChangeType.Changed }];
  const shown = await client.shownAfter(protocol.DidChangeWatchedFilesNotification.type, { changes }, isOfText);
  return rules(checked(shown));
}

const rules = diagnostics => diagnostics.map(one => `${one.code} ${one.severity}`);

/** The part of the text that a range covers. */
const covered = range => TextDocument.create(uri, 'yaml', version, text).getText(range);

async function actions(range, diagnostics, kind) {
  const found = await client.ask(protocol.CodeActionRequest.type,
    { textDocument: { uri }, range, context: { diagnostics, only: [kind] } });
  found.forEach(one => assert(protocol.CodeAction.is(one) && one.kind === kind, JSON.stringify(one)));
  return found;
}

/** The text after an action, applied by the rules of the protocol. */
function applied(action) {
  assert(protocol.WorkspaceEdit.is(action.edit), JSON.stringify(action.edit));
  const [only, ...others] = action.edit.documentChanges;
  assert.deepEqual([only.textDocument, others], [{ uri, version }, []]);
  return TextDocument.applyEdits(TextDocument.create(uri, 'yaml', version, text), only.edits);
}

async function hover(marked) {
  const at = atBar(marked);
  await type(at.text);
  const found = await client.ask(protocol.HoverRequest.type, { textDocument: { uri }, position: at.position });
  assert(protocol.Hover.is(found), JSON.stringify(found));
  assert.equal(found.contents.kind, 'markdown');
  return found.contents.value;
}

async function definition(marked) {
  const at = atBar(marked);
  await type(at.text);
  const found = await client.ask(protocol.DefinitionRequest.type, { textDocument: { uri }, position: at.position });
  assert(found.length === 1 && protocol.Location.is(found[0]), JSON.stringify(found));
  return found[0];
}

/** What is offered at the cursor: the text after each proposal, by its label. */
async function offered(marked) {
  const at = atBar(marked);
  await type(at.text);
  const found = await client.ask(protocol.CompletionRequest.type, { textDocument: { uri }, position: at.position });
  const document = TextDocument.create(uri, 'yaml', version, text);
  return Object.fromEntries((Array.isArray(found) ? found : found.items).map(one => {
    assert(protocol.TextEdit.is(one.textEdit), JSON.stringify(one));
    return [one.label, TextDocument.applyEdits(document, [one.textEdit])];
  }));
}

async function begin() {
  const begun = await client.ask(protocol.InitializeRequest.type, {
    processId: process.pid,
    rootUri: uriOf(folder),
    workspaceFolders: null,
    capabilities: {
      workspace: { workspaceEdit: { documentChanges: true }, didChangeWatchedFiles: { dynamicRegistration: true } },
      textDocument: {
        publishDiagnostics: { relatedInformation: true, versionSupport: true },
        hover: { contentFormat: ['markdown', 'plaintext'] },
        codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: ['quickfix', 'source.fixAll'] } } },
      },
    },
  });
  assert.equal(begun.serverInfo.name, 'Headhouse Linter');
  assert.equal(begun.capabilities.textDocumentSync, protocol.TextDocumentSyncKind.Full);
  assert.deepEqual(begun.capabilities.codeActionProvider.codeActionKinds, ['quickfix', 'source.fixAll']);
  await client.notify(protocol.InitializedNotification.type, {});
}

async function diagnostics() {
  assert.deepEqual(await type(site), []);
  // A tree is two units of UTF-16 and one character: what comes after it on the line must not shift.
  const shown = await type(change('- unit: Hardening Bay\n    role: follower\n    address: 3',
    '- {unit: "\u{1F332}", role: follower, address: 2,\n    #').replace(/#[^]*/, 'comm-module: fitted, conductors: [A, B], '
      + 'termination: 120 ohm, outdoor: {light: head, temperature: head}}\n'));
  const twice = shown.find(one => one.code === 'address.duplicate');
  assert.equal(covered(twice.range), '2');
  assert.equal(twice.source, 'linter');
  assert.equal(covered(twice.relatedInformation[0].location.range), '2');
}

async function fixes() {
  const shown = await type(change('stage: planned', 'stage: planed').replace('role: head', 'role: haed'));
  assert.deepEqual(rules(shown), ['schema.bad-value 1', 'schema.bad-value 1']);
  assert.deepEqual(shown.map(one => covered(one.range)), ['planed', 'haed']);
  const [one] = await actions(shown[0].range, shown, 'quickfix');
  assert.deepEqual(one.diagnostics, [shown[0]]);
  assert.equal(applied(one), change('role: head', 'role: haed'));
  const whole = { start: shown[0].range.start, end: shown[1].range.end };
  const [all] = await actions(whole, shown, 'source.fixAll');
  assert.equal(applied(all), site);
  assert.deepEqual(await type(applied(all)), []);
  assert.deepEqual(await actions(whole, [], 'source.fixAll'), []);
}

async function hovers() {
  assert.match(await hover(change('address: 3', 'address: |4')), /# address\.gap\n[^]*## Why\n[^]*## Sources/);
  assert.match(await hover(change('address: 3', 'addr|ess: 3')), /^\*\*Server address\*\*/);
  assert.match(await hover(change('unit: Seedling North', 'unit: Seed|ling North')), /Idle voltage: [0-9]+ mV/);
}

async function completions() {
  assert.equal((await offered(change('stage: planned', 'sta|'))).stage, change('stage: planned', 'stage: '));
  const names = await offered(change('{at: Propagation, readings', '{at: |, readings'));
  assert.equal(names['Hardening Bay'], change('{at: Propagation, readings', '{at: Hardening Bay, readings'));
  assert.deepEqual(Object.keys(await offered(`${site}  - |`)), ['unit', 'repeater', 'equipment', 'converter']);
  assert.deepEqual(Object.keys(await offered(`${site}    device-type: |`)), ['eight-way', 'four-way']);
  const ids = await offered(`${site}suppressions:\n  - rule: |`);
  assert.equal(ids['address.gap'], `${site}suppressions:\n  - rule: address.gap`);
  assert(!('yaml.syntax' in ids) && !('suppression.unused' in ids), Object.keys(ids).join());
}

async function definitions() {
  const unit = await definition(change('{at: Propagation, readings', '{at: Prop|agation, readings'));
  assert.equal(unit.uri, uri);
  assert.equal(covered(unit.range), 'Propagation');
  assert.equal(text.split('\n')[unit.range.start.line], '  - unit: Propagation');
  const type = await definition(`${site}    device-type: four|-way\n`);
  assert.equal(type.uri, uriOf(types));
  assert.match(fs.readFileSync(types, 'utf8').split('\n')[type.range.start.line], /id: four-way/);
}

async function filesOnDisk() {
  const [registration] = client.registered;
  assert.equal(registration.method, protocol.DidChangeWatchedFilesNotification.method);
  assert.deepEqual(registration.registerOptions.watchers.map(one => one.globPattern), ['**/device-types.yaml', '**/linter.yaml']);
  assert.deepEqual(rules(await type(`${site}    device-type: three-way\n`)), ['reference.unknown 1']);
  const before = fs.readFileSync(types, 'utf8');
  assert.deepEqual(await writeOnDisk(types, `${before}  - {id: three-way}\n`), []);
  assert.deepEqual(await writeOnDisk(types, before), ['reference.unknown 1']);
  const policy = path.join(folder, 'linter.yaml');
  assert.deepEqual(await writeOnDisk(policy, 'format: 1\nrule-set: 1\nrules: {reference.unknown: {level: note}}\n'),
    ['reference.unknown 3']);
  assert.deepEqual(await writeOnDisk(policy, 'format: 1\nrule-set: 1\n'), ['reference.unknown 1']);
}

async function end() {
  assert.equal(await client.end(), 0);
  assert.equal(fs.readFileSync(path.join(folder, 'sites', 'example.yaml'), 'utf8'), site);
}

async function walk() {
  for (const step of [begin, diagnostics, fixes, hovers, completions, definitions, filesOnDisk, end]) {
    await step();
    console.log(step.name);
  }
}

walk().then(() => process.exit(0), fail);
