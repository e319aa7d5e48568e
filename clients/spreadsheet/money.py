"""How many decimals money has: by ISO 4217, as the service counts them, after the currency that is entered."""
from sheets import MONEY, SIGNED

USUAL = 2
OTHER = {
    0: "ADP BEF BIF BYB BYR CLP DJF ESP GNF GRD ISK ITL JPY KMF KRW LUF MGF PTE PYG ROL RWF TPE TRL UGX UYI VND VUV XAF XOF XPF".split(),
    3: "BHD IQD JOD KWD LYD OMR TND".split(),
    4: ["CLF"],
}
CODE, DECIMALS, FOUND = 4, 5, 7  # columns of the hidden sheet Codes


def found(codes):
    """Where the decimals of the currency that is entered stand."""
    return codes.ref(2, FOUND)


def fill_money(book):
    rows = [(code, decimals) for decimals, codes in OTHER.items() for code in codes]
    for row, (code, decimals) in enumerate(rows, 2):
        book.codes.put(row, CODE, code, "machine")
        book.codes.put(row, DECIMALS, decimals, "machine")
    codes, decimals = (book.codes.area(2, column, 1 + len(rows), column) for column in (CODE, DECIMALS))
    book.codes.put(2, FOUND, f'=IFERROR(INDEX({decimals},MATCH({book.cell["currency"]},{codes},0)),{USUAL})', "machine")


def rounded(book, money):
    """To the smallest unit of the currency, a half away from zero; nothing stays nothing."""
    return f'IFERROR(ROUND({money},{book.decimals}),"")'


def formats():
    """How money is shown in currencies whose decimals are not the usual ones: format, decimals, format with these."""
    return [(form, decimals, form.replace(".00", "." + "0" * decimals if decimals else "")) for form in (MONEY, SIGNED) for decimals in OTHER]
