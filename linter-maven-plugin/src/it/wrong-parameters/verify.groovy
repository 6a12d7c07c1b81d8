import org.headhouse.linter.maven.BuildRecord

def build = new BuildRecord(basedir)
def at = { String module, String name -> new File(new File(basedir, module), name).path }
build.passes('wrong-parameters')

build.fails('fail-level', 'linter.failLevel cannot be "loud": use one of error, warning, note, none')
build.fails('print-level', 'linter.printLevel cannot be "warnign": use warning')
build.fails('no-threads', 'linter.threads cannot be 0: use 1 or more')
build.fails('threads-in-words', 'threads', "'two'")
build.passes('many-threads')
build.fails('missing-folder', 'linter.sites names ' + at('missing-folder', 'no-such-folder') + ', which does not exist')
build.fails('missing-policy', 'linter.policy names ' + at('missing-policy', 'no-such-policy.yaml') + ', which is not a file')
build.fails('missing-device-types', 'linter.deviceTypes names ' + at('missing-device-types', 'no-such-types.yaml') + ', which is not a file')
build.fails('wrong-pattern', 'linter.includes or linter.excludes has a pattern that cannot be read, "(("')
build.fails('no-match', 'no file in ' + at('no-match', 'sites') + ' matches **/*.yaml, **/*.yml', 'linter.allowEmpty')
build.fails('output-is-a-file', 'results.sarif cannot be written: ', 'there is a file where a folder is needed')

build.passes('empty-allowed')
build.says('0 sites, 0 units: 0 errors, 0 warnings, 0 notes')
assert build.results('empty-allowed/target/linter') == []

// A fault of the policy is a result like that of a site.
def rule = build.place('broken-policy/linter.yaml', 'address.gapp', 1)
build.fails('broken-policy', '1 result fails the build:', 'linter.yaml:' + rule + ': error: there is no rule "address.gapp"')
assert build.results('broken-policy/target/linter') == ['linter.yaml:' + rule + ': error [schema.unknown-key]']

// What cannot be read is told once the rest is checked.
build.fails('unreadable-link', 'sites/lost.yaml: the file cannot be read: it does not exist')
assert build.results('unreadable-link/target/linter') == []

// Nor is what lies elsewhere.
build.fails('link-out', 'sites/out.yaml: the file cannot be read: it is a link that leads out of the folder of sites, to ')
assert build.results('link-out/target/linter') == []

build.passes('circular-link')
assert build.results('circular-link/target/linter') == []

['MojoExecutionException', 'MojoFailureException', 'PluginConfigurationException'].each { build.says(it) }
// A mistake of the user is not one of the tool.
['PluginExecutionException', 'java.nio', 'java.lang', 'NullPointer'].each { build.saysNot(it) }
return true
