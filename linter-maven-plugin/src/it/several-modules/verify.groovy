import org.headhouse.linter.maven.BuildRecord

def build = new BuildRecord(basedir)
def modules = ('a'..'h').collect { 'range-' + it }

// One module has a fault, and only its own results tell of it.
(modules - 'range-e').each { module ->
  assert build.results(module + '/target/linter') == []
}
def results = build.results('range-e/target/linter')
def place = build.place('range-e/sites/range-e.yaml', 'false', 1)
assert results == ['sites/range-e.yaml:' + place + ': warning [cable.unshielded]']

// Each module says which it is, so that a host keeps the results of all.
def ids = modules.collect { module ->
  def log = new File(basedir, module + '/target/linter/results.sarif')
  new groovy.json.JsonSlurper().parse(log).runs[0].automationDetails.id
}
assert ids.toSet().size() == modules.size()
[modules, ids].transpose().each { module, id -> assert id.endsWith(module + '/default/') }
build.says('Using the MultiThreadedBuilder implementation with a thread count of 4')
return true
