import groovy.json.JsonSlurper
import org.headhouse.linter.maven.BuildRecord

def build = new BuildRecord(basedir)
def changes = { String output -> new JsonSlurper().parse(new File(basedir, output + '/changes.json')) }

// The order of the work, and what became of each site, whatever its file is called.
def since = changes('target/linter')
assert since.since == 'HEAD'
assert since.sites.collect { it.site + ' ' + it.kind } == [
    'birch-lane added', 'alder-brook changed', 'cedar-hill changed', 'elm-row removed']
def alder = since.sites.find { it.site == 'alder-brook' }
assert alder.steps.collect { it.kind } == ['prepare', 'set-address', 'wire']
assert alder.steps[1].subMap('unit', 'from', 'to') == [unit: 'Hardening Bay', from: 3, to: 4]
assert alder.materials.needed.any { it.material == 'cable' && it.toOrder != null }
assert since.sites.find { it.site == 'cedar-hill' }.earlierFile == 'sites/old-name.yaml'
build.says('[INFO] Changes since HEAD')
build.says('At "Hardening Bay" set the address from 3 to 4. Restart the unit.')
assert new File(basedir, 'target/linter/changes.md').text.startsWith('# Changes since HEAD\n\n## Cautions\n')

def record = 'sites/alder-brook.yaml:' + build.place('sites/alder-brook.yaml', '2026-03-14', 1) + ': error [change.record-kept]'
def moved = 'sites/alder-brook.yaml:' + build.place('sites/alder-brook.yaml', '4\n', 2)
def clash = build.results('target/all').find { it.endsWith('[site.duplicate-id]') }
assert clash.startsWith('sites/birch-lane.yaml:2:7')
assert build.results('target/all').contains(record)
assert build.results('target/all').any { it.endsWith('warning [change.commissioned-readdressed]') }
assert build.results('target/all').any { it.startsWith('sites/birch-lane.yaml:') && it.endsWith('[termination.missing-at-end]') }

// What did not change is not told, but for the clash that a changed file has brought.
def only = build.results('target/only')
assert only.contains(record)
assert only.contains(clash)
assert !only.any { it.endsWith('[termination.missing-at-end]') }
build.says('Only sites that differ from HEAD are reported: 3 of 4 files.')
assert build.results('target/green') == []

assert changes('target/folder').sites.collect { it.kind } == ['changed', 'removed', 'removed', 'removed']
build.says('linter.since: there is no revision HEAD~1: use one that git log shows')
build.says('there is nothing to compare with: use -Dlinter.since=HEAD, or -Dlinter.before')
build.says('linter.changedOnly needs linter.since: use for example -Dlinter.since=origin/main')
return true
