def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('[\u001B[1;31mERROR\u001B[m] \u001B[1;31merror: \u001B[0m\u001B[1mnot-utf-8\u001B[0m\n')
true
