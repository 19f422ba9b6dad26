def runs = new File(basedir, 'build.log').getText('UTF-8').split('Scanning for projects')
// the shipped texts are known anywhere
assert runs[1].contains('[INFO] steel 1.4116 ')
assert runs[1].contains('BUILD SUCCESS')
assert runs[2].contains('Nothing is named no-such-name')
assert !runs[2].contains('Exception:') && !runs[2].contains('\tat ')
true
