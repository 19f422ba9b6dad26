def log = new File(basedir, 'build.log').getText('UTF-8')
def sources = new File(basedir, 'src/main/ricasso')
assert new File(sources, 'belts/wide.ricasso').getText('UTF-8') == '''\
knife x {    // a knife
    number:   "AB-1"
    length:   200 ± 1 mm
    hardness: min 56 HRC
}
'''
// what is laid out is not written again
assert new File(sources, 'good.ricasso').lastModified() == 1000000000000L
assert new File(sources, 'belts/rows.csv').getText('UTF-8') == 'a ,  b\r\n'
assert new File(sources, 'belts').list().sort() == ['rows.csv', 'wide.ricasso']
assert log.count('Laid out src/main/ricasso/belts/wide.ricasso.') == 1
assert log.contains('2 texts read, 1 laid out anew.')
assert log.contains('2 texts read, 0 laid out anew.')
assert log.contains('2 texts read, all laid out.')
assert log.contains('Skipped, as ricasso.skipLayout says.')
assert log.contains('1 text read, all laid out.')
assert !new File(basedir, 'target').exists()
true
