import org.headhouse.linter.maven.BuildRecord

def build = new BuildRecord(basedir)
def failures = build.failures()
assert failures.size() == 2
assert failures[0].contains('there is no property linter.failLevl: use linter.failLevel')
assert failures[1].contains('linter.recheck cannot be "maybe": use true or false')

// The third build has checked the site, whatever else it was given.
build.says('1 site, 3 units: ')
assert new File(basedir, 'target/linter/results.sarif').exists()
return true
