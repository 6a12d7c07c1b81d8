import org.headhouse.linter.maven.BuildRecord
import org.headhouse.linter.maven.PluginJar

def build = new BuildRecord(basedir)

// Without the policy, cable.unshielded would tell; without the types of device, name.too-long.
assert build.results('target/linter') == []
assert build.results('target/one-file') == []
assert build.results('target/settings-inside') == []
assert build.failedCases('target/linter') == 0

// By file, whatever the number of threads.
def figures = build.figures('target/linter')
assert figures.collect { it.site } == ['alder-brook', 'birch-lane']
assert build.figures('target/settings-inside').collect { it.site } == ['cedar-hill']
build.says('Figures are in target/linter/figures.json')
build.says('Figures are in target/settings-inside/figures.json')
build.says('Sheets are in target/linter/index.html')
def page = new File(basedir, 'target/linter/alder-brook.html').getText('UTF-8')
assert page.contains('size: a4;') && page.contains('40 m')
assert new File(basedir, 'target/linter/alder-brook-zones.csv').getText('UTF-8').startsWith('zone,address,role,device-type,ip\r\n')
def american = new File(basedir, 'target/settings-inside/cedar-hill.html').getText('UTF-8')
assert american.contains('size: letter;') && american.contains(' ft')
assert new File(basedir, 'target/linter/materials.csv').getText('UTF-8').contains(',40,m,44,yes,')
assert new File(basedir, 'target/settings-inside/materials.csv').getText('UTF-8').contains(',40,m,50,yes,')
assert new File(basedir, 'target/linter/inventory.csv').getText('UTF-8').split('\r\n').size() == 1 + 4
// One file to send, only where it was asked for: everything of the site, and nothing else.
assert !new File(basedir, 'target/linter').list().any { it.endsWith('.zip') }
new java.util.zip.ZipFile(new File(basedir, 'target/settings-inside/cedar-hill-bundle.zip')).withCloseable { zip ->
  def names = zip.entries().collect { it.name - 'cedar-hill-bundle/' }
  assert names.containsAll(['cedar-hill-certificate.html', 'cedar-hill-night-card.html', 'cedar-hill-zones.csv', 'cedar-hill.html',
      'device-types.yaml', 'index.html', 'sites/cedar-hill.yaml', 'SHA256SUMS.txt'])
  def read = { zip.getInputStream(zip.getEntry("cedar-hill-bundle/$it")).bytes }
  assert read('sites/cedar-hill.yaml') == new File(basedir, 'mixed/cedar-hill.yaml').bytes
  new String(read('SHA256SUMS.txt'), 'UTF-8').readLines().each { line ->
    def (digest, name) = line.split('  ')
    assert java.security.MessageDigest.getInstance('SHA-256').digest(read(name)).encodeHex().toString() == digest
  }
}
def segment = figures[0].segments[0]
assert segment.items == ['Propagation', 'Seedlings and young plants']
assert segment.lengthMetres == 40
// 24 AWG has 25.67 ohm per 1000 ft at 20 degC (wire table, HyperPhysics): out and back on 40 m.
assert Math.abs(segment.loopResistanceOhms - 2 * 25.67 * 40 / 304.8) < 0.01
assert segment.unitLoads == 2
// Without the cable's resistance, nodal analysis gives 5 V / (510 ohm * (1/510 + 2/12000 + 4/120)) = 276.5 mV
// (TI SLLA272); with it, the end with the bias has more and the other less.
assert segment.idleVolts['Propagation'] > 0.2765 && segment.idleVolts['Propagation'] < 0.2865
assert segment.idleVolts['Seedlings and young plants'] < 0.2765 && segment.idleVolts['Seedlings and young plants'] > 0.2665
assert figures[0].traffic == null

build.says('2 sites, 4 units: 0 errors, 0 warnings, 0 notes')
// The two files of settings lie in the folder there, and are no sites.
build.saysNot('3 sites')
build.says('Results are in target/linter')
build.says('Results are in target/settings-inside')

// A user without a name has no key.
assert System.getProperty('user.name') == '?' || new File(basedir, 'target/linter/clean-sites.cache').isFile()

def plugin = new PluginJar(localRepositoryPath, basedir)
plugin.needsNothing()
plugin.hasTheLicencesOfItsLibraries()
plugin.isTidy()

return true
