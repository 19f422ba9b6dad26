def log = new File(basedir, 'build.log').getText('UTF-8')
def sources = new File(basedir, 'src/main/ricasso')
// what can be read is laid out, what cannot be read stays byte for byte
assert new File(sources, 'a.ricasso').text == 'belt P80 { grit: 80 }\n'
assert new File(sources, 'b.ricasso').text == 'belt   P90 {\n grit: 5mm\n}\n'
assert new File(sources, 'c.ricasso').bytes == 'belt   P100 { remark: "gr\u00F6\u00DFer" }\n'.getBytes('ISO-8859-1')
assert log.count('  src/main/ricasso/b.ricasso:2:8\n') == 2
assert log.count('] error: not-utf-8') == 2
assert log.contains('3 texts read, 1 laid out anew.')
assert log.contains('2 texts below src/main/ricasso cannot be read and stay as they are, with 2 errors; mend them and run again: mvn ricasso:format')
assert log.contains('2 of 3 texts below src/main/ricasso cannot be read; mend what cannot be read, then run: mvn ricasso:format')
assert log.contains('No text below src/main/ricasso has a name like belts/*.ricasso, as ricasso.files says.')
assert !log.contains('Exception:') && !log.contains('\tat ')
true
