import groovy.json.JsonSlurper
import org.headhouse.linter.maven.BuildRecord

def build = new BuildRecord(basedir)

build.says('[INFO] address.duplicate           error    No two devices share an address.')
build.says('[INFO] # address.gap')
build.says('[INFO] ## Breaks the rule')

assert new File(basedir, 'target/linter').list().sort() ==
    ['device-types.schema.json', 'policy.schema.json', 'site.schema.json']
assert new JsonSlurper().parse(new File(basedir, 'target/linter/site.schema.json'))['$schema'] ==
    'https://json-schema.org/draft/2020-12/schema'

build.fails('wrong-rule', 'there is no rule "adress.gap": use address.gap')
build.fails('far-off-rule', 'there is no rule "zzz": use one of ', 'address.gap, ')
return true
