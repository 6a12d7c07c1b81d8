import java.util.concurrent.TimeUnit
import javax.tools.ToolProvider
import org.headhouse.linter.maven.BuildRecord

new BuildRecord(basedir)

def classPath = { String module ->
  new File(basedir, "$module/target/class-path.txt").text.trim().split(File.pathSeparator) as List
}
def libraries = { String module -> classPath(module).collect { new File(it).name } }

/** Starts the program: what it prints and writes, without what SLF4J says where it has no provider. */
def run = { String module, List<String> options ->
  def out = new File(basedir, "$module/target/output")
  def log = new File(basedir, "$module/target/program.txt")
  def command = [System.getProperty('java.home') + '/bin/java'] + options + [out.path]
  def process = new ProcessBuilder(command).directory(basedir)
      .redirectErrorStream(true).redirectOutput(log).start()
  assert process.waitFor(2, TimeUnit.MINUTES)
  [lines: log.readLines('UTF-8').findAll { !it.startsWith('SLF4J') },
   files: ['results.sarif', 'figures.json'].collect { new File(out, it) }
       .findAll { it.file }.collect { it.getText('UTF-8') }]
}
def runOnClassPath = { String module ->
  def path = [new File(basedir, "$module/target/classes").path] + classPath(module)
  run(module, ['-cp', path.join(File.pathSeparator), 'example.program.Program'])
}

def plain = runOnClassPath('plain')
assert plain.lines.last() == 'failed'
assert plain.lines.init()
    .every { it ==~ /sites.alder-brook\.yaml:\d+:\d+: (error|warning): .* \[[a-z0-9.-]+]/ }
assert plain.lines.collect { it.replaceFirst(/.* \[(.*)]/, '$1') }.containsAll(
    ['schema.bad-value', 'schema.wrong-type', 'schema.unknown-key', 'schema.bad-quantity', 'schema.out-of-range'])
assert plain.files[0].contains('"schema.bad-value"')
assert plain.files[1].contains('"site" : "alder-brook"')

// Each BOM holds other versions of the libraries; what comes out is the same, line for line.
['boot-3.2', 'boot-3.5', 'boot-4.0'].each { module ->
  ['snakeyaml', 'jackson-core', 'jackson-databind', 'slf4j-api'].each { held ->
    assert libraries(module).find { it.startsWith(held) } != libraries('plain').find { it.startsWith(held) }
  }
  assert runOnClassPath(module) == plain
}

// A program gets what checks and sheets need, and nothing that only the plugin and the command need.
assert libraries('plain').collect { it.replaceFirst(/-\d.*/, '') }.toSorted() == [
    'itu', 'jackson-annotations', 'jackson-core', 'jackson-databind', 'json-schema-validator', 'jspecify',
    'jte-runtime', 'linter-core', 're2j', 'slf4j-api', 'snakeyaml']

// The same program as a module, with the option that the page on embedding names, and without.
def modules = new File(basedir, 'plain/target/modules')
def sources = ['src/module/java/module-info.java', 'src/main/java/example/program/Program.java']
    .collect { new File(basedir, it).path }
assert ToolProvider.systemJavaCompiler.run(null, null, null,
    *['-p', classPath('plain').join(File.pathSeparator), '-d', modules.path], *sources) == 0
def modulePath = ['-p', ([modules.path] + classPath('plain')).join(File.pathSeparator)]
def program = ['-m', 'example.program/example.program.Program']
assert run('plain', modulePath + ['--add-modules', 'ALL-MODULE-PATH'] + program) == plain
assert run('plain', modulePath + program).lines[0].contains(
    'on the module path the option --add-modules ALL-MODULE-PATH')
return true
