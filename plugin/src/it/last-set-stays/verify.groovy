import java.security.MessageDigest

def log = new File(basedir, 'build.log').getText('UTF-8')
def refused = log.split('Scanning for projects')[2]
assert refused.contains('] error: ')
assert refused.contains(', so target/instructions was left as it was; ')
assert refused.contains('BUILD FAILURE')
// the set of the first run stands, whole
def set = new File(basedir, 'target/instructions')
assert new File(set, 'index.html').getText('UTF-8').contains('A small works')
new File(set, 'SHA256SUMS').readLines('UTF-8').each {
    def (sum, name) = it.split('  ', 2)
    assert MessageDigest.getInstance('SHA-256').digest(new File(set, name).bytes).encodeHex().toString() == sum
}
assert new File(basedir, 'target').list().findAll { it.startsWith('instructions') } == ['instructions']
true
