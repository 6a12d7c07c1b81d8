import org.headhouse.linter.maven.BuildRecord

def build = new BuildRecord(basedir)
def twice = 'sites/dale-end.yaml:' + build.place('sites/dale-end.yaml', '1\n', 3)
def undeclared = 'sites/elm-row.yaml:' + build.place('sites/elm-row.yaml', 'Propagation\n', 1)
def role = 'sites/elm-row.yaml:' + build.place('sites/elm-row.yaml', 'hed\n', 1)

assert build.results('target/linter') == [
  twice + ': error [address.duplicate]',
  undeclared + ': error [termination.undeclared]',
  role + ': error [schema.bad-value]',
]
assert build.failedCases('target/linter') == 3

build.says('[ERROR] ' + twice + ': error: address 1 is used twice')
build.fails('broken', '3 results fail the build:', twice + ': error: ', undeclared + ': error: ', role + ': error: ')
build.says('MojoFailureException')
build.saysNot('MojoExecutionException')
build.says('3 sites, 6 units: 3 errors, 0 warnings, 0 notes')
return true
