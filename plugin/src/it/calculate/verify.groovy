def runs = new File(basedir, 'build.log').getText('UTF-8').split('Scanning for projects')
assert runs[1] =~ /\[INFO\] value  212(\.0+)? mm\n/
assert runs[1].contains('BUILD SUCCESS')
assert runs[2].contains('] error: ')
assert runs[2].contains('The expression has no value: 1 error; mend it and run the goal again')
assert !runs[2].contains('Exception:') && !runs[2].contains('\tat ')
true
