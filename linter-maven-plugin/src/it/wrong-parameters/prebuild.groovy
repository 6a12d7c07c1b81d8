import java.nio.file.Files
import java.nio.file.Path

def sites = { String module -> basedir.toPath().resolve(module).resolve('sites') }

// A folder that holds a link to itself has no end for whoever follows it.
Files.createSymbolicLink(sites('circular-link').resolve('again'), Path.of('..', 'sites'))
Files.createSymbolicLink(sites('unreadable-link').resolve('lost.yaml'), Path.of('no-such-file.yaml'))
Files.createSymbolicLink(sites('link-out').resolve('out.yaml'), Path.of('..', 'pom.xml'))
return true
