def log = new File(basedir, 'build.log').getText('UTF-8')
def sources = new File(basedir, 'src/main/ricasso')
assert log.count('] error: layout') == 2
assert log.contains('  src/main/ricasso/b-blanks.ricasso:2:3\n')
assert log.contains('  remedy   lay it out with: mvn ricasso:format\n')
assert log.contains('  src/main/ricasso/c-end.ricasso:2:28\n')
assert log.contains('the last line has no end')
assert log.contains('2 of 3 texts below src/main/ricasso are not laid out; do it with: mvn ricasso:format')
assert log.contains('BUILD FAILURE')
assert !log.contains('Exception:') && !log.contains('\tat ')
// nothing is written
assert new File(sources, 'b-blanks.ricasso').text == 'belt P80 "P80" {\n  grit:  80\n}\n'
assert !new File(basedir, 'target').exists()
true
