import java.nio.file.Files
import java.nio.file.Path

def from = Path.of(house)
['one', 'two', 'three, größer'].each { module ->
    def to = basedir.toPath().resolve("${module}/src/main/ricasso".toString())
    Files.walk(from).withCloseable { walk ->
        walk.filter { Files.isRegularFile(it) }.forEach {
            def copy = to.resolve(from.relativize(it).toString())
            Files.createDirectories(copy.parent)
            Files.copy(it, copy)
        }
    }
}
true
