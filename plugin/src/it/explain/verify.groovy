def runs = new File(basedir, 'build.log').getText('UTF-8').split('Scanning for projects')
assert runs[1].contains('BUILD SUCCESS')
assert runs[1].contains('Temper')
assert runs[2].contains('Nothing is named tempr; the nearest is temper: mvn ricasso:explain -Dricasso.name=temper')
assert !runs[2].contains('Exception:') && !runs[2].contains('\tat ')
true
