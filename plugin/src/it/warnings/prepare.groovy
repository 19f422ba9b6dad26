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

// and a rule of the works' own that only warns
to.resolve('own-rules.ricasso').toFile().setText('''\
rule little-carbon "A steel has little carbon" {
    for:     steel
    require: carbon <= 0.001
    say:     "carbon is {carbon}"
    because: "it is asked for to see a warning"
    source:  "invented"
    level:   warning
    example passes { carbon: 0.0005 }
    example fails  { carbon: 0.005 }
}
''', 'UTF-8')
true
