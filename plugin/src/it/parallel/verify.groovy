def log = new File(basedir, 'build.log').getText('UTF-8')
assert !log.contains('not marked as')
def sets = ['one', 'two', 'three, größer'].collect {
    new File(basedir, "${it}/target/instructions/SHA256SUMS").getText('UTF-8')
}
assert sets.toSet().size() == 1
def report = new File(basedir, 'three, größer/target/ricasso/report.sarif').getText('UTF-8')
assert report.contains('"results"')
true
