import java.nio.file.Files
import java.nio.file.Path

// the demonstration house is what these goals are for
def from = Path.of(house)
def to = basedir.toPath().resolve('src/main/ricasso')
Files.walk(from).withCloseable { walk ->
    walk.filter { Files.isRegularFile(it) }.forEach {
        def copy = to.resolve(from.relativize(it).toString())
        Files.createDirectories(copy.parent)
        Files.copy(it, copy)
    }
}
true
