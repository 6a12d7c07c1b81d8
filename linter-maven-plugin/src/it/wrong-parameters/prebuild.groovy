import java.nio.file.Files
import java.nio.file.Path
import java.nio.file.attribute.PosixFilePermissions

def sites = { String module -> basedir.toPath().resolve(module).resolve('sites') }

// A folder that holds a link to itself has no end for whoever follows it.
Files.createSymbolicLink(sites('circular-link').resolve('again'), Path.of('..', 'sites'))
Files.createSymbolicLink(sites('unreadable-link').resolve('lost.yaml'), Path.of('no-such-file.yaml'))

def nothing = PosixFilePermissions.fromString('---------')
Files.setPosixFilePermissions(sites('unreadable-file').resolve('closed.yaml'), nothing)
Files.setPosixFilePermissions(sites('unreadable-folder').resolve('closed'), nothing)
return true
