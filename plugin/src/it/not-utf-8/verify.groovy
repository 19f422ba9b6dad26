def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('[ERROR] error: not-utf-8\n  src/main/ricasso/steels.ricasso:1:51\n')
assert log.contains('^ the byte 0xB0 is not UTF-8 here')
assert log.contains('because  in windows-1252, an older encoding, this byte is °')
assert log.contains('remedy   save the file in the encoding UTF-8')
assert log.contains('1 text read, 1 error; nothing was checked.')
assert log.contains('The house below src/main/ricasso has 1 error; mend it and run the build again')
assert log.contains('BUILD FAILURE')
assert !log.contains('Exception:') && !log.contains('\tat ')
// batch mode: no colour
assert !log.contains('\u001B[1;31m')
assert new File(basedir, 'target/ricasso/report.sarif').getText('UTF-8').contains('"ruleId" : "not-utf-8"')
assert !new File(basedir, 'target/instructions').exists()
true
