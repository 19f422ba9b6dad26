def log = new File(basedir, 'build.log').getText('UTF-8')
// a wrong folder must not look like a house that holds
assert log.contains('[WARNING] Nothing was checked: there is no text below src/main/ricasso.')
assert log.contains('[WARNING] Nothing was rendered: there is no text below src/main/ricasso.')
assert !new File(basedir, 'target/ricasso').exists()
assert !new File(basedir, 'target/instructions').exists()
true
