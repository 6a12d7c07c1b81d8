import java.nio.file.Files
import java.nio.file.attribute.PosixFilePermissions
import org.headhouse.linter.maven.BuildRecord

def closedFile = basedir.toPath().resolve('unreadable-file/sites/closed.yaml')
def closedFolder = basedir.toPath().resolve('unreadable-folder/sites/closed')
// The superuser reads everything.
def closedIsClosed = !Files.isReadable(closedFile)
Files.setPosixFilePermissions(closedFile, PosixFilePermissions.fromString('rw-r--r--'))
Files.setPosixFilePermissions(closedFolder, PosixFilePermissions.fromString('rwxr-xr-x'))

def build = new BuildRecord(basedir)
def at = { String module, String name -> new File(new File(basedir, module), name).path }
build.passes('wrong-parameters')

build.fails('fail-level', 'linter.failLevel cannot be "loud": write one of error, warning, note, none')
build.fails('print-level', 'linter.printLevel cannot be "warnign": write warning')
build.fails('no-threads', 'linter.threads cannot be 0: write 1 or more')
build.fails('threads-in-words', 'threads', "'two'")
build.passes('many-threads')
build.fails('missing-folder', 'linter.sites names ' + at('missing-folder', 'no-such-folder') + ', which does not exist')
build.fails('missing-policy', 'linter.policy names ' + at('missing-policy', 'no-such-policy.yaml') + ', which is not a file')
build.fails('missing-device-types', 'linter.deviceTypes names ' + at('missing-device-types', 'no-such-types.yaml') + ', which is not a file')
build.fails('wrong-pattern', 'linter.includes or linter.excludes has a pattern that cannot be read, "(("')
build.fails('no-match', 'no file in ' + at('no-match', 'sites') + ' matches **/*.yaml, **/*.yml', 'linter.allowEmpty')
build.fails('output-is-a-file', 'results.sarif cannot be written: ', 'a file stands where a folder is needed')

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

build.passes('circular-link')
assert build.results('circular-link/target/linter') == []

if (closedIsClosed) {
  build.fails('unreadable-file', 'sites/closed.yaml: the file cannot be read: permission denied')
  assert build.results('unreadable-file/target/linter') == []
  build.fails('unreadable-folder', 'the folder of sites cannot be read: ', closedFolder.toString() + ': permission denied')
} else {
  println 'NOT CHECKED: files and folders without permission to read, because the superuser may read them.'
}

['MojoExecutionException', 'MojoFailureException', 'PluginConfigurationException'].each { build.says(it) }
// A mistake of the user is not one of the tool.
['PluginExecutionException', 'java.nio', 'java.lang', 'NullPointer'].each { build.saysNot(it) }
return true
