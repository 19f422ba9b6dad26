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

// the README's section is the source: its texts, in the order in which they stand there
def readme = new File(house, '../../../../README.md').getText('UTF-8')
def section = readme.substring(readme.indexOf('### An operation and a rule of your own'), readme.indexOf('### Knowledge of your own'))
def texts = section.findAll(/(?s)```ricasso\n(.*?)\n```/) { all, text -> text }
assert texts.size() == 2
to.resolve('nitrogen.ricasso').toFile().setText(texts[0] + '\n', 'UTF-8')
def route = to.resolve('forged-riveted.ricasso').toFile()
def text = route.getText('UTF-8')
def frozen = text.find(/(?m)^    160 sub-zero at freezer-1 \{\n(?:        .*\n)+    \}\n/)
assert frozen
route.setText(text.replace(frozen, texts[1] + '\n'), 'UTF-8')
// the knife that leaves the step out names what it leaves out
def tool = to.resolve('cooks-210-tool.ricasso').toFile()
assert tool.getText('UTF-8') =~ /omit +160 sub-zero/
tool.setText(tool.getText('UTF-8').replaceAll(/omit +160 sub-zero/, 'omit 160 nitrogen-soak'), 'UTF-8')

// the same house with the blades cooled too fast
def fast = basedir.toPath().resolve('too-fast')
Files.createDirectories(fast)
to.toFile().eachFile { Files.copy(it.toPath(), fast.resolve(it.name)) }
def hurried = fast.resolve('forged-riveted.ricasso').toFile()
hurried.setText(hurried.getText('UTF-8').replace('        hold:        120 ± 10 min\n', '        hold:        120 ± 10 min\n        cooling:     8 ± 1 K/min\n'), 'UTF-8')
true
