import groovy.json.JsonSlurper
import org.headhouse.linter.maven.BuildRecord

def build = new BuildRecord(basedir)
def states = { String module ->
  def log = new JsonSlurper().parse(new File(basedir, module + '/target/linter/results.sarif'))
  log.runs[0].results.collect { it.baselineState + ' ' + it.ruleId }
}

// What is there is taken, and then fails nothing.
build.passes('written')
build.says('2 results are in the baseline known.jsonl')
build.says("For a single result, a suppression in the site's file is better")
build.says('1 site, 2 units: 0 errors, 0 warnings, 0 notes, 2 known from the baseline')
assert new File(basedir, 'written/known.jsonl').text == new File(basedir, 'later/known.jsonl').text
assert states('written') == ['unchanged cable.unshielded', 'unchanged conductors.pair-missing']
assert build.results('written/target/linter').size() == 2
assert build.failedCases('written/target/linter') == 0
assert new File(basedir, 'written').list().sort() == ['known.jsonl', 'linter.yaml', 'pom.xml', 'sites', 'target']

// Later one is mended, one is left, and one is new.
def twice = 'sites/fern-dell.yaml:' + build.place('later/sites/fern-dell.yaml', '1\n', 3)
build.fails('later', '1 result fails the build:', twice + ': error: address 1 is used twice')
build.says('1 site, 2 units: 1 error, 0 warnings, 0 notes, 1 known from the baseline')
build.says('1 result of the baseline is gone: write the baseline again, so that none can come back unseen:')
build.says('[INFO]   sites/fern-dell.yaml: chain/Seedling North/conductors: [A] [conductors.pair-missing]')
assert states('later') == ['unchanged cable.unshielded', 'new address.duplicate', 'absent conductors.pair-missing']
assert build.failedCases('later/target/linter') == 1

build.fails('lost', 'the baseline known.jsonl does not exist: ', 'mvn org.headhouse:linter-maven-plugin:baseline')
build.fails('damaged', 'known.jsonl:2: a mark of a merge that was not finished; write the baseline anew')
build.says('MojoExecutionException')
['java.nio', 'UnusableBaseline', 'NullPointer'].each { build.saysNot(it) }
return true
