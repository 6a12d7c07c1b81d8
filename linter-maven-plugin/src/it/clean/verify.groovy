import org.headhouse.linter.maven.BuildRecord

def build = new BuildRecord(basedir)

// Without the policy, cable.unshielded would tell; without the types of device, name.too-long.
assert build.results('target/linter') == []
assert build.results('target/one-file') == []
assert build.results('target/settings-inside') == []
assert build.failedCases('target/linter') == 0

build.says('2 sites, 4 units: 0 errors, 0 warnings, 0 notes')
// The two files of settings lie in the folder there, and are no sites.
build.saysNot('3 sites')
build.says('Results are in target/linter')
build.says('Results are in target/settings-inside')
return true
