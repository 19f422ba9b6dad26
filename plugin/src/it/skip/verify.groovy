def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.count('Skipped, as ricasso.skip says.') == 2
assert !new File(basedir, 'target/ricasso').exists()
assert !new File(basedir, 'target/instructions').exists()
true
