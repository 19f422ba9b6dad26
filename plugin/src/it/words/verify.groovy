def runs = new File(basedir, 'build.log').getText('UTF-8').split('Scanning for projects')
def set = new File(basedir, 'target/instructions')
// the first language at the top, the other in its folder
assert new File(set, 'index.html').getText('UTF-8').contains('<html lang="en">')
def german = new File(set, 'de/ab-2120/step-170.html').getText('UTF-8')
assert german.contains('<html lang="de">') && german.contains('href="../../ab-2120/step-170.html"') && !german.contains('class="borrowed"')
assert runs[1].contains('BUILD SUCCESS')
// the demonstration house is whole in German
assert runs[2].contains('de is whole: nothing is left to write.')
assert !new File(basedir, 'target/words/de').exists()
// nobody has written French: sheets for all, the folder of the texts untouched
assert runs[3] =~ /\d+ sheets in target\/words\/fr; fill them in and put them below src\/main\/ricasso\./
def sheets = new File(basedir, 'target/words/fr')
assert sheets.list().toList().containsAll(['operations.ricasso', 'works.ricasso'])
assert new File(sheets, 'operations.ricasso').getText('UTF-8').contains('// Temper\n    operation temper "" {')
// a language that is asked for must be whole
assert runs[4].contains('] error: words-missing') && runs[4].contains('fr has no words for') && runs[4].contains('further findings')
assert runs[5].contains('ricasso.languages names German, which is no language')
assert runs[6].contains('among the texts of the house')
assert !new File(basedir, 'src/main/ricasso/fr').exists()
assert !runs.any { it.contains('\tat org.ricasso') }
true
