// line ends of any kind, a byte order mark, signs with two spellings
new File(basedir, 'src/main/ricasso/belts').mkdirs()
new File(basedir, 'src/main/ricasso/belts/wide.ricasso').setText(
        '\uFEFFknife x {   // a knife\r\n  number: "AB-1"\r\n  length:   200 +- 1 mm;hardness: >= 56 HRC }\r\n', 'UTF-8')
// not a text of the language: nobody touches it
new File(basedir, 'src/main/ricasso/belts/rows.csv').setText('a ,  b\r\n', 'UTF-8')
new File(basedir, 'src/main/ricasso/good.ricasso').setLastModified(1000000000000L)
true
