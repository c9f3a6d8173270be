"""What the irradiation grid is corrected by before packing. Nothing yet."""

FACTS = {}


def corrected(k, lat):
    return k
