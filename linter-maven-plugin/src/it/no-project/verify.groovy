import groovy.json.JsonSlurper
import org.headhouse.linter.maven.BuildRecord

def build = new BuildRecord(basedir)

assert build.results('target/linter') == []
build.says('1 site, 2 units: 0 errors, 0 warnings, 0 notes')

def fault = 'faulty/dale-end.yaml:' + build.place('faulty/dale-end.yaml', '1\n', 3)
assert build.results('target/faulty') == [fault + ': error [address.duplicate]']
build.fails('standalone-pom', '1 result fails the build:', fault + ': error: ')

assert build.figures('target/linter').collect { it.site } == ['alder-brook']
def torn = build.figures('target/torn')
assert torn.collect { it.site } == ['elm-row', 'gorse-hill']
// The length there lacks its unit.
assert torn[0].segments[0].lengthMetres == null
assert torn[0].segments[0].pairResistanceOhms == null
assert torn[1].segments[0].lengthMetres == 40
build.says('[WARNING] torn/fern-dell.yaml: it has no figures: a check tells why')

build.says('address.gap                 error    The addresses are 1, 2, 3')
build.says('Checks the sites of a repository, and fails the build where a rule is broken.')

['site', 'device-types', 'policy'].each { kind ->
  def file = new File(basedir, "target/linter/${kind}.schema.json")
  assert new JsonSlurper().parse(file)['$schema'] == 'https://json-schema.org/draft/2020-12/schema'
  build.says("Wrote target/linter/${kind}.schema.json")
}

// Nothing else was written; .mvn is of the test itself.
assert (basedir.list() - '.mvn').sort() == ['build.log', 'faulty', 'invoker.properties', 'sites', 'target', 'torn', 'verify.groovy']
return true
