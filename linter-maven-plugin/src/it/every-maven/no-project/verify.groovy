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
assert new File(basedir, 'target/torn').list().sort() ==
    (['elm-row', 'gorse-hill'].collectMany { site ->
      ['-certificate.html', '-faults.html', '-materials.html', '-night-card.html', '-van.html', '-visit.csv', '-yearly.html', '-zones.csv', '.html'].collect { site + it }
    } + ['figures.json', 'index.html', 'inventory.csv', 'materials.csv']).sort()
def table = { new File(basedir, "target/torn/$it").getText('UTF-8').split('\r\n').toList() }
assert table('inventory.csv')[0] ==
    'customer,site,unit,role,address,device-type,firmware,serial-number,vents,ip,stage,proved-on,proved-by,next-proof,open-exceptions'
assert table('inventory.csv').size() == 1 + 2 + 2
// The length there lacks its unit: it is named, and not counted as none.
def cable = table('materials.csv').findAll { it.contains(',cable,') }
assert cable.any { it.startsWith(',elm-row,') && it.contains(',m,,no,') }
assert cable.any { it.startsWith(',gorse-hill,') && it.contains(',40,m,44,yes,') }
def index = new File(basedir, 'target/torn/index.html').getText('UTF-8')
assert index.contains('not readable') && index.contains('[yaml.syntax]')
build.says('[WARNING] torn/fern-dell.yaml: it has no figures and no sheets: the index says why')

build.says('address.gap                 error    The addresses are 1, 2, 3')
build.says('Checks the sites of a repository, and fails the build if a rule is broken.')

['site', 'device-types', 'policy'].each { kind ->
  def file = new File(basedir, "target/linter/${kind}.schema.json")
  assert new JsonSlurper().parse(file)['$schema'] == 'https://json-schema.org/draft/2020-12/schema'
  build.says("Wrote target/linter/${kind}.schema.json")
}

build.says('1 result is in the baseline linter-baseline.jsonl')
build.says('A check uses it once the policy says "baseline: linter-baseline.jsonl"')
assert build.results('target/known') == [fault + ': error [address.duplicate]']
assert build.failedCases('target/known') == 0
build.says('0 errors, 0 warnings, 0 notes, 1 known from the baseline')

build.says('0 results are in the baseline target/torn.jsonl')
build.says(' not in it, because other rules depend on them')
build.says('[WARNING]   torn/fern-dell.yaml:')
assert new File(basedir, 'target/torn.jsonl').text == '{"baseline-format":1}\n'

// Nothing else was written; .mvn is of the test itself.
assert (basedir.list() - '.mvn').sort() == ['build.log', 'faulty', 'invoker.properties', 'linter-baseline.jsonl', 'sites', 'target', 'torn', 'verify.groovy']
return true
