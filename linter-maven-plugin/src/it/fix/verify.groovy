import org.headhouse.linter.maven.BuildRecord

def build = new BuildRecord(basedir)
def crlf = '\r\n'

// Shown, and not written.
build.says('[INFO] shown/elm-row.yaml: safe: Number the units 1 to 3 along the chain [address.duplicate]')
build.says('''[INFO] --- a/shown/elm-row.yaml
[INFO] +++ b/shown/elm-row.yaml
[INFO] @@ -14,15 +14,16 @@
[INFO]      outdoor: {light: local, rain: local}
[INFO]      cable-to-next: 40 m
[INFO]    - unit: Seedling North
[INFO] -    rolle: follower
[INFO] +    role: follower
[INFO]      address: 2
[INFO]      comm-module: fitted
[INFO]      conductors: [A, B]             # no ground here
[INFO] -    outdoor: {light: head, rain: local}
[INFO] +    termination: none
[INFO] +    outdoor: {light: head, rain: head}
[INFO]      cable-to-next: 60 m
[INFO]    - unit: Hardening Bay
[INFO]      role: follower
[INFO] -    address: 2                     # to be asked
[INFO] +    address: 3                     # to be asked
[INFO]      comm-module: fitted
[INFO]      conductors: [A, B]
[INFO]      termination: 120 ohm
'''.replace('\n', System.lineSeparator()))
build.says('4 fixes in 1 of 1 site; 1 result is left, of which 1 would have a fix with -Dlinter.fixes=proposed')
build.says('Nothing is written. To write the changes: -Dlinter.write=true')
def shown = new File(basedir, 'shown/elm-row.yaml').bytes
assert shown == new File(basedir, '../../../../src/it/fix/shown/elm-row.yaml').bytes

// Written with the mark in front, the line ends and the comments that it had.
def expected = new String(shown, 'UTF-8')
    .replace('rolle:', 'role:')
    .replace('rain: local}\n    cable-to-next: 60', 'rain: head}\n    cable-to-next: 60')
    .replace('address: 2   ', 'address: 3   ')
    .replace('# no ground here\n', '# no ground here\n    termination: none\n')
    .replace('26 AWG', '24 AWG')
    .replace('\n', crlf)
assert new File(basedir, 'written/elm-row.yaml').getText('UTF-8') == '\uFEFF' + expected
build.says('0 fixes in 0 of 1 site; 1 result is left')
build.says('written/elm-row.yaml: proposed: Use a cable of 24 AWG [cable.too-thin]')
build.says('do the work at the units too')
assert new File(basedir, 'written').list() == ['elm-row.yaml']

assert build.failures().size() == 1
build.fails('standalone-pom', 'linter.fixes cannot be "all": use one of safe, proposed')
return true
