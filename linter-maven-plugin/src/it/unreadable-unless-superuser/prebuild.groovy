import java.nio.file.Files
import java.nio.file.attribute.PosixFilePermissions

['unreadable-file/sites/closed.yaml', 'unreadable-folder/sites/closed'].each { path ->
  Files.setPosixFilePermissions(
      basedir.toPath().resolve(path), PosixFilePermissions.fromString('---------'))
}
return true
