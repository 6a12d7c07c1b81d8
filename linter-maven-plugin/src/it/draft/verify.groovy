import org.headhouse.linter.maven.BuildRecord

def build = new BuildRecord(basedir)
def text = { path -> new File(basedir, path).getText('UTF-8') }

build.says('[INFO] Wrote sites/elm-row.yaml: go through the lines marked "look:"')
assert text('sites/elm-row.yaml').contains('  - unit: Hardening Bay\n    role: follower\n    address: 3\n')
assert text('sites/elm-row.yaml').contains('  readings: [light, temperature, wind-speed, wind-direction, rain]\n')

build.says('[INFO] Wrote plans/fern-dell.yaml')
def plan = text('plans/fern-dell.yaml')
['title: "NO"\n', '  at: "Potting; Shed"\n', '  readings: [wind-speed]\n', '  baud: 19200\n',
 '  parity: none\n', '  stop-bits: 2\n', '{gauge: 0.5 mm2, shielded: true, impedance: 100 ohm}',
 '    - {at: "Potting; Shed", resistors: 510 ohm, supply: 5 V}\n', '    termination: 100 ohm\n',
 '    cable-to-next: 12.5 m\n', '  - unit: "12:30é"\n'].each { assert plan.contains(it) }

// The check of what was written.
assert build.results('target/linter').every { it.endsWith(': note [draft.open-point]') }

def failures = build.failures()
def fault = 'lists/faulty.csv:'
[['the list of units has 5 faults, and nothing is written:', fault + '2:13: error: the length "42" has no unit',
  fault + '3:21: error: the device type "eightway" is not known', fault + '4:1: error: the unit has no name',
  fault + '5:1: error: the name "propagation" is used twice', fault + '5:13: error: the last unit has 5 m'],
 ['the list of units cannot be read: ', 'lists/missing.csv', 'it does not exist'],
 ['linter.readings cannot be "winds-peed": use wind-speed'],
 ['lists/device-types.yaml:3:40: error: '],
 ['there is neither a list of units nor an id for the site: use -Dlinter.csv=<file> and -Dlinter.site=<id>']].eachWithIndex { wanted, i ->
  wanted.each { assert failures[i].contains(it) }
}
assert failures.size() == 5

build.says('[INFO] Wrote plans/heath-end.yaml')
build.says('[cable.too-long]')

// A site that is there: the difference, and nothing else.
build.says('[WARNING] sites/elm-row.yaml: "Seedling North" (unit, address 2) is not in the list, and the difference removes it')
['--- a/sites/elm-row.yaml', '-    cable-to-next: 42 m', '+    cable-to-next: 45 m', '-  - unit: Seedling North',
 'Nothing is written. To write the changes: -Dlinter.write=true'].each { build.says('[INFO] ' + it) }
assert text('sites/elm-row.yaml').contains('  - unit: Seedling North\n')

// What is set on site, faults and all; then the later list, with the comments and the repeater left as they were.
build.says('address 4 is used twice')
build.says('[INFO] Wrote plans/moss-side.yaml')
def live = text('plans/moss-side.yaml')
assert live.contains('# look: columns of the list that were not read: grower\n')
['    address: 2\n', '    vents: roof-and-side\n', '  - repeater: East Boiler Room\n',
 '    cable-to-next: 96.5 ft\n', '    termination: {in: 120 ohm, out: 120 ohm}\n'].each { assert live.contains(it) }

// Nothing else was written, and no part of a file is left.
assert new File(basedir, 'sites').list() == ['elm-row.yaml']
assert new File(basedir, 'plans').list().sort() == ['fern-dell.yaml', 'heath-end.yaml', 'moss-side.yaml']
return true
