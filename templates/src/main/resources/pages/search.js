// Hides the lines of the index that do not hold what is searched for. Without it the index is whole.
(function () {
  var search = document.querySelector(".search");
  var input = search.querySelector("input");
  var output = search.querySelector("output");
  var rows = Array.prototype.slice.call(document.querySelectorAll("tbody tr"));
  var texts = rows.map(function (row) { return row.textContent.toLowerCase(); });
  function show() {
    var words = input.value.toLowerCase().split(/\s+/).filter(Boolean);
    var found = 0;
    rows.forEach(function (row, i) {
      var fits = words.every(function (word) { return texts[i].indexOf(word) >= 0; });
      row.hidden = !fits;
      found += fits ? 1 : 0;
    });
    output.textContent = words.length ? found + " found" : "";
  }
  search.hidden = false;
  input.addEventListener("input", show);
  show();
}());
