"""The hidden sheet Codes: words of the service beside those of the workbook's language."""


def fill_codes(book):
    for row, (code, word) in enumerate(book.words.codes.items(), 2):
        book.codes.put(row, 1, code, "machine")
        book.codes.put(row, 2, word, "machine")
