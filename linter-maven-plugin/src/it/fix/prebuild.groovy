// Git would not keep the line ends.
def text = new File(basedir, 'shown/elm-row.yaml').getText('UTF-8')
def written = new File(basedir, 'written/elm-row.yaml')
written.parentFile.mkdirs()
written.setText('\uFEFF' + text.replace('\n', '\r\n'), 'UTF-8')
return true
