def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('Nothing is named no-such-name')
assert !log.contains('Exception:') && !log.contains('\tat ')
true
