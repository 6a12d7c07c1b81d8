import org.headhouse.linter.maven.BuildRecord

def build = new BuildRecord(basedir)
def log = new File(basedir, 'build.log').text
def goals = log.split(/:fix /).drop(1)

// The line was in operation: no address is set anew, and the new name is followed.
def safe = goals[0]
assert safe.contains('safe: Write the new name "Cold Frames" wherever "Hardening Bay" is referred to [supervision.zone-unknown]')
assert safe.contains('safe: Add the zone "Young Plants" [supervision.zone-missing]')
assert safe.contains('+  zones: [Propagation, Young Plants, Seedling North, Cold Frames]')
assert !safe.contains('Number the units')
assert safe.contains('1 result is left, of which 1 would have a fix with -Dlinter.fixes=proposed')

// Who decides it can have the whole line renumbered.
def proposed = goals[1]
assert proposed.contains('proposed: Number the units 1 to 4 along the chain [address.order]')
assert proposed.contains('-    address: 4') && proposed.contains('+    address: 2')

def planned = goals[2]
assert !planned.contains('Number the units')
assert planned.contains('1 result is left, of which 1 would have a fix with -Dlinter.fixes=proposed')

assert build.failures().size() == 1
build.fails('standalone-pom', 'linter.since: there is no revision HEAD~1: use one that git log shows, or a branch or tag that is fetched')
return true
