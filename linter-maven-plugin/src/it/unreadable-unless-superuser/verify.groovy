import java.nio.file.Files
import java.nio.file.attribute.PosixFilePermissions
import org.headhouse.linter.maven.BuildRecord

def closed = basedir.toPath().resolve('unreadable-folder/sites/closed')
// Opened again, so that the next build can clear them away.
Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString('rwxr-xr-x'))
Files.setPosixFilePermissions(
    basedir.toPath().resolve('unreadable-file/sites/closed.yaml'), PosixFilePermissions.fromString('rw-r--r--'))

def build = new BuildRecord(basedir)
build.passes('unreadable-unless-superuser')
build.fails('unreadable-file', 'sites/closed.yaml: the file cannot be read: permission denied')
// The other site is checked all the same.
build.says('2 sites, 2 units: 0 errors, 0 warnings, 0 notes')
assert build.results('unreadable-file/target/linter') == []
build.fails('unreadable-folder', 'the folder of sites cannot be read: ' + closed + ': permission denied')
build.says('MojoExecutionException')
build.saysNot('java.nio')
return true
