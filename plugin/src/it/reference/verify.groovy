def runs = new File(basedir, 'build.log').getText('UTF-8').split('Scanning for projects')
assert runs[1].contains('BUILD SUCCESS')
assert runs[1].contains('files in target/reference; open index.html.')
assert runs[2].contains('files in target/reference, unchanged; open index.html.')
// the works' own steel, and the last set stays where the house does not hold
assert new File(basedir, 'target/reference/kinds/steel.html').getText('UTF-8').contains('A steel of our own')
assert new File(basedir, 'target/reference/language.html').exists()
assert new File(basedir, 'target/reference/findings/limits.html').exists()
assert runs[3].contains('The house does not hold, so there is no reference; mvn ricasso:check says why.')
assert !runs[3].contains('\tat ')
true
