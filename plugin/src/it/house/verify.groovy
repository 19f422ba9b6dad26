import groovy.json.JsonSlurper
import java.security.MessageDigest

def log = new File(basedir, 'build.log').getText('UTF-8')
assert !log.contains('error:') && !log.contains('Exception')
assert !log.contains('Plugin validation issues')
assert log.count('15 products checked') == 2
// the second run finds the same set and does not write it again
assert log =~ /\d+ files in target\/instructions; open index\.html\./
assert (log =~ /\d+ files in target\/instructions, unchanged; open index\.html\./).count == 1

def set = new File(basedir, 'target/instructions')
assert new File(set, 'index.html').getText('UTF-8').contains('A small works')
def sums = new File(set, 'SHA256SUMS').readLines('UTF-8')
def files = []
set.eachFileRecurse { if (it.isFile() && it.name != 'SHA256SUMS') files << it }
assert sums.size() == files.size()
sums.each {
    def (sum, name) = it.split('  ', 2)
    assert MessageDigest.getInstance('SHA-256').digest(new File(set, name).bytes).encodeHex().toString() == sum
}
assert new File(basedir, 'target').list().findAll { it.startsWith('instructions') } == ['instructions']

// the same pages as an artifact, byte by byte, in order
def zip = new java.util.zip.ZipFile(new File(basedir, 'target').listFiles().find { it.name.endsWith('-instructions.zip') })
def entries = zip.entries().toList()
assert entries*.name == entries*.name.sort(false)
assert entries*.name as Set == files.collect { set.toPath().relativize(it.toPath()).toString().replace('\\', '/') } as Set
entries.each { assert zip.getInputStream(it).bytes == new File(set, it.name).bytes }
zip.close()

def house = new JsonSlurper().parse(new File(basedir, 'target/ricasso/house.json'), 'UTF-8')
assert house.form == 'ricasso-house' && house.products.size() == 15
assert new File(basedir, 'target/ricasso/house.schema.json').isFile()
assert new File(basedir, 'target/ricasso/report.xml').getText('UTF-8').count('<testcase ') == 16

def run = new JsonSlurper().parse(new File(basedir, 'target/ricasso/report.sarif'), 'UTF-8').runs[0]
assert run.results.every { it.level != 'error' }
true
