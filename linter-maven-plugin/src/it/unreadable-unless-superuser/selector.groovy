import java.nio.file.Files
import java.nio.file.attribute.PosixFilePermissions

// The superuser reads everything, so there is nothing to be seen.
def probe = Files.createTempFile(basedir.toPath(), 'probe', null)
Files.setPosixFilePermissions(probe, PosixFilePermissions.fromString('---------'))
def closed = !Files.isReadable(probe)
Files.delete(probe)
return closed
