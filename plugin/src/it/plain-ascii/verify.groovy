def bytes = new File(basedir, 'build.log').bytes
def log = new String(bytes, 'US-ASCII')
assert log.contains('because  in windows-1252, an older encoding, this byte is deg')
// the console's encoder writes a question mark for what it lacks: nothing was left to it but the byte itself
assert log.readLines().findAll { it.contains('because') || it.contains('remedy') }.every { !it.contains('?') }
true
