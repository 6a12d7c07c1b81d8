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
build.says('Using the MultiThreadedBuilder implementation with a thread count of 4')
return true
