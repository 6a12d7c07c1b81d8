import org.headhouse.linter.maven.BuildRecord

def build = new BuildRecord(basedir)
def warning = { String module ->
  "sites/${module}.yaml:" + build.place("${module}/sites/${module}.yaml", 'false', 1) + ': warning'
}

// A warning is printed and fails nothing, unless that is asked for.
build.passes('printed')
build.says('[WARNING] ' + warning('printed') + ': the cable is not shielded')
build.passes('not-printed')
build.saysNot(warning('not-printed'))
build.fails('warning-fails', '1 result fails the build:', warning('warning-fails'))
build.saysNot('[WARNING] ' + warning('warning-fails'))

// What is printed and what fails changes nothing in the files.
['printed', 'not-printed', 'warning-fails'].each { module ->
  assert build.results(module + '/target/linter') == [warning(module) + ' [cable.unshielded]']
}
assert build.failedCases('not-printed/target/linter') == 0
assert build.failedCases('warning-fails/target/linter') == 1

build.passes('nothing-fails')
build.says('[ERROR] sites/nothing-fails.yaml:')
assert build.results('nothing-fails/target/linter').size() == 1

build.passes('skipped')
build.says('The goal is skipped by linter.skip.')
build.saysNot('sites/skipped.yaml')
assert !new File(basedir, 'skipped/target/linter').exists()
return true
