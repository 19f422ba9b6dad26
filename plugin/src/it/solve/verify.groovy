def log = new File(basedir, 'build.log').getText('UTF-8')
def good = new File(house, 'solved.lock').bytes
assert log.contains('error: solve-missing') && log.contains('remedy   write the lock anew: mvn ricasso:solve')
assert log.contains('Solved temperature of step 110 of paring-90: 205 ± 5 °C (leaves hardness 55.3..55.7 HRC, asked 54..57 HRC).')
assert log.contains('src/main/ricasso/solved.lock: 1 line written, 0 solved as before.')
assert log.contains('src/main/ricasso/solved.lock: 0 lines written, 1 solved as before.')
assert new File(basedir, 'src/main/ricasso/solved.lock').bytes == good
assert new File(basedir, 'src/main/ricasso').list().every { !it.endsWith('.next') }
// once solved the house holds
assert log =~ /\d+ products checked, \d+ texts read: nothing found against them/

assert log.contains('error: solve-none') && log.contains('misses it by 0.5 HRC')
assert log.contains('Not solved: temperature of step 110 of paring-90; what the lock says of it stays.')
assert log.contains('1 setting could not be solved for, and the house below out-of-reach has 1 error; what the lock says of them stays.')
assert new File(basedir, 'out-of-reach/solved.lock').bytes == good

assert log.contains('Left out line 1: this line of the lock cannot be read.')
assert log.contains('Left out temperature of step 110 of peeling-70: nothing solves for it any more.')
assert new File(basedir, 'damaged/solved.lock').bytes == good

assert log.contains('damaged-and-out-of-reach/solved.lock has 2 lines that cannot be read')
assert new File(basedir, 'damaged-and-out-of-reach/solved.lock').bytes == new File(basedir, 'damaged-and-out-of-reach.lock').bytes

assert log.contains('No product of the house has the name or number AB-9999')
assert !log.contains('Exception:') && !log.contains('\tat ')
true
