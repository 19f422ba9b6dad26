import java.nio.file.Files
import java.nio.file.Path

def from = Path.of(house)
def copy = { String name ->
    def to = basedir.toPath().resolve(name)
    Files.walk(from).withCloseable { walk ->
        walk.filter { Files.isRegularFile(it) }.forEach {
            def file = to.resolve(from.relativize(it).toString())
            Files.createDirectories(file.parent)
            Files.copy(it, file)
        }
    }
    to.toFile()
}
def outOfReach = { File folder ->
    def text = new File(folder, 'paring-90.ricasso')
    text.setText(text.getText('UTF-8').replaceFirst('54\\.\\.57 HRC', '57..58 HRC'), 'UTF-8')
}
def damage = { File folder ->
    def lock = new File(folder, 'solved.lock')
    def gone = lock.readLines('UTF-8').find { it.startsWith('paring-90') }.replace('paring-90', 'peeling-70')
    lock.setText('<<<<<<< ours\n' + lock.getText('UTF-8').replace(' = ', ' is ') + gone + '\n', 'UTF-8')
}
assert new File(copy('src/main/ricasso'), 'solved.lock').delete()
outOfReach(copy('out-of-reach'))
damage(copy('damaged'))
def both = copy('damaged-and-out-of-reach')
outOfReach(both)
damage(both)
new File(basedir, 'damaged-and-out-of-reach.lock').bytes = new File(both, 'solved.lock').bytes
true
