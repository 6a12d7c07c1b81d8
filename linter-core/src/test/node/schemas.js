'use strict';
// The published schemas by a reader of another maker: node schemas.js <folder> <page>
// The folder has schema/*.schema.json and sites/example.yaml, which keeps every rule. The page shows the settings.
const assert = require('node:assert/strict');
const fs = require('node:fs');
const path = require('node:path');
const protocol = require('vscode-languageserver-protocol/node');
const { TextDocument } = require('vscode-languageserver-textdocument');
const { Client, atBar, fail, uriOf } = require('./client');

const [folder, page] = process.argv.slice(2);
const reader = path.join(__dirname, 'node_modules', 'yaml-language-server', 'bin', 'yaml-language-server');
const client = new Client([process.execPath, reader, '--stdio'], folder);
const shownPage = fs.readFileSync(page, 'utf8');
const [modeline] = shownPage.match(/^# yaml-language-server: .*\n/m);
const settings = JSON.parse(shownPage.match(/```json\n([^]*?)```/)[1]);
const POLICY = 'format: 1\nrule-set: 1\n';
const site = fs.readFileSync(path.join(folder, 'sites', 'example.yaml'), 'utf8');
let version = 0;

/** What the reader says of a text, and what it offers at a cursor. */
async function ask(name, marked) {
  const { text, position } = marked.includes('|') ? atBar(marked) : { text: marked, position: undefined };
  const uri = uriOf(path.join(folder, name));
  version++;
  const shown = await client.shownAfter(protocol.DidOpenTextDocumentNotification.type,
    { textDocument: { uri, languageId: 'yaml', version, text } }, params => params.uri === uri);
  const items = [];
  if (position) {
    const found = await client.ask(protocol.CompletionRequest.type, { textDocument: { uri }, position });
    items.push(...(Array.isArray(found) ? found : found.items));
  }
  // Where a text is closed, the reader shows that nothing is wrong with it any more.
  await client.shownAfter(protocol.DidCloseTextDocumentNotification.type, { textDocument: { uri } },
    params => params.uri === uri && params.diagnostics.length === 0);
  const document = TextDocument.create(uri, 'yaml', version, text);
  return {
    messages: shown.map(one => one.message),
    labels: items.map(one => one.label),
    after: label => TextDocument.applyEdits(document, [items.find(one => one.label === label).textEdit]),
  };
}

/** A part of the settings, whose keys have points between their words. */
function section(name) {
  const entries = Object.entries(settings).filter(([key]) => key.startsWith(`${name}.`));
  return entries.reduce((whole, [key, value]) => {
    const words = key.slice(name.length + 1).split('.');
    const last = words.pop();
    words.reduce((part, word) => part[word] ??= {}, whole)[last] = value;
    return whole;
  }, {});
}

async function begin() {
  client.connection.onRequest(protocol.ConfigurationRequest.type,
    params => params.items.map(one => section(one.section)));
  await client.ask(protocol.InitializeRequest.type, {
    processId: process.pid,
    rootUri: uriOf(folder),
    workspaceFolders: [{ uri: uriOf(folder), name: 'sites' }],
    capabilities: { workspace: { configuration: true, workspaceFolders: true }, textDocument: { completion: {} } },
  });
  await client.notify(protocol.InitializedNotification.type, {});
  await client.notify(protocol.DidChangeConfigurationNotification.type, { settings: { yaml: section('yaml') } });
}

async function valid() {
  assert.deepEqual((await ask('sites/example.yaml', site)).messages, []);
  const own = `${site}suppressions:\n  - {rule: our.own-rule, justification: Agreed.}\n`;
  assert.deepEqual((await ask('sites/example.yaml', own)).messages, []);
  assert.deepEqual((await ask('linter.yaml', `${POLICY}rules: {our.own-rule: {level: none}}\n`)).messages, []);
}

async function invalid() {
  assert.equal((await ask('sites/range/example.yaml', site.replace('planned', 'planed'))).messages.length, 1);
  assert.deepEqual((await ask('elsewhere/example.yaml', site.replace('planned', 'planed'))).messages, []);
  assert.equal((await ask('elsewhere/example.yaml', modeline + site.replace('planned', 'planed'))).messages.length, 1);
  assert.equal((await ask('device-types.yaml', 'format: 1\ndevice-types:\n  - {id: four way}\n')).messages.length, 1);
  assert.deepEqual((await ask('linter.yaml', `${POLICY}rules: {our.own-rule: {levle: none}}\n`)).messages,
    ['Property levle is not allowed.']);
  assert.equal((await ask('sites/example.yaml', site.replace('planned', 'planed'))).messages.length, 1);
  assert.deepEqual((await ask('sites/example.yaml', `${site}suppressions:\n  - {rule: 7, justification: Agreed.}\n`)).messages,
    ['Incorrect type. Expected "string".']);
}

async function rules() {
  const rule = `${site}suppressions:\n  - justification: Agreed.\n    rule: |\n`;
  const found = await ask('sites/example.yaml', rule);
  assert(found.labels.length > 50 && !found.labels.includes('yaml.syntax'), found.labels.join());
  assert.equal(found.after('signal.weak'), rule.replace('|', 'signal.weak'));
  const begun = await ask('sites/example.yaml', rule.replace('|', 'sign|'));
  assert.equal(begun.after('signal.weak'), rule.replace('|', 'signal.weak'));
}

async function policy() {
  const found = await ask('linter.yaml', `${POLICY}rules:\n  |\n`);
  assert(found.labels.length > 50 && found.labels.includes('address.gap'), found.labels.join());
  const level = await ask('linter.yaml', `${POLICY}rules:\n  address.gap:\n    level: |\n`);
  assert.deepEqual(level.labels, ['error', 'warning', 'note', 'none']);
}

const KINDS = ['unit', 'repeater', 'equipment', 'converter'];

async function items() {
  assert.deepEqual((await ask('sites/example.yaml', `${site}  - |\n`)).labels, KINDS);
  assert.deepEqual((await ask('sites/example.yaml', `${site}  - address: 4\n    |\n`)).labels, KINDS);
  const empty = await ask('sites/example.yaml', `${site}  -\n`);
  assert.deepEqual(empty.messages, ['Incorrect type. Expected "Unit, repeater, equipment or converter".']);
  assert((await ask('sites/example.yaml', `${site}  - {}\n`)).messages.includes('Missing property "unit".'));
  const unit = await ask('sites/example.yaml', `${site}  - unit: Fourth\n    |\n`);
  assert(unit.labels.includes('role') && !unit.labels.includes('repeater'), unit.labels.join());
  assert(unit.messages.includes('Missing property "address".'), unit.messages.join());
  const repeater = await ask('sites/example.yaml', `${site}  - repeater: Fourth\n    |\n`);
  assert(repeater.labels.includes('isolated') && !repeater.labels.includes('role'), repeater.labels.join());
  assert.deepEqual(repeater.messages, []);
}

async function end() {
  assert.equal(await client.end(), 0);
}

async function walk() {
  for (const step of [begin, valid, invalid, rules, policy, items, end]) {
    await step();
    console.log(step.name);
  }
}

walk().then(() => process.exit(0), fail);
