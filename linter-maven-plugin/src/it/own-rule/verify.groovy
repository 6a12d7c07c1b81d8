import org.headhouse.linter.maven.BuildRecord

def build = new BuildRecord(basedir)

// The rule's own test ran, and the other module took the rule from the jar of this build.
build.says('Tests run: 4, Failures: 0, Errors: 0, Skipped: 0')
assert new File(basedir, 'rule/target/nursery-rules-1.jar').file

// 140 m is within the policy's drum, 160 m is not; the level is the policy's too.
assert build.results('sites/target/linter') == ['sites/elm-row.yaml:22:20: note [nursery.long-run]']
build.says('the run behind "Mist House" is 160 m [nursery.long-run]')
build.says('why: a drum has 150 m')
build.says('1 site, 3 units: 0 errors, 0 warnings, 1 note')

// The page lies beside the class of the rule.
build.says('A splice in the ground fails in its first winter.')
return true
