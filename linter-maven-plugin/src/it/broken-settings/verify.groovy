import org.headhouse.linter.maven.BuildRecord

def build = new BuildRecord(basedir)
def failures = build.failures()
assert failures.size() == 3

// An address that is to be kept free is not handed out because its entry was not understood.
def range = 'policy/linter.yaml:' + build.place('policy/linter.yaml', '100..109', 1) + ': error: '
assert failures[0].contains('1 result fails the build:') && failures[0].contains(range)
build.says('[ERROR] ' + range)
def site = 'policy/sites/elm-row.yaml'
assert new File(basedir, site).bytes == new File(basedir, '../../../../src/it/broken-settings/' + site).bytes

failures[1..2].each { assert it.contains('1 result fails the build:') && it.contains('types/device-types.yaml:') }
build.says('[ERROR] types/device-types.yaml:')
build.saysNot('Order of the field work')

// Nothing was written.
assert !new File(basedir, 'target').exists()
return true
