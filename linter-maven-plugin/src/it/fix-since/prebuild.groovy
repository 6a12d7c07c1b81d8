import java.nio.file.Files
import org.eclipse.jgit.api.Git

def sites = new File(basedir, 'sites')
sites.mkdirs()
def copy = { String state ->
  sites.listFiles().each { it.delete() }
  new File(basedir, state).listFiles().each { Files.copy(it.toPath(), sites.toPath().resolve(it.name)) }
}
new File(basedir, '.git').deleteDir()
Git git = Git.init().setDirectory(basedir).call()
copy('earlier')
git.add().addFilepattern('sites').call()
git.commit().setMessage('As it was').setAuthor('R.O.', 'r.o@example.org')
    .setCommitter('R.O.', 'r.o@example.org').setSign(false).call()
git.close()
copy('later')
return true
