def log = new File(basedir, 'build.log').getText('UTF-8')
assert log =~ /\[INFO\] value  350(\.0+)? mm\n/
true
