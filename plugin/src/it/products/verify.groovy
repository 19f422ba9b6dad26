def runs = new File(basedir, 'build.log').getText('UTF-8').split('Scanning for projects')
assert runs[1].contains('1 product checked')
assert runs[2].contains('2 products checked')
assert runs[3].contains('No product of the house has the name or number AB-9999')
assert !runs[3].contains('Exception:') && !runs[3].contains('\tat ')
true
