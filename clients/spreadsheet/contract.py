"""What the contract says about the fields a cell may send and read. A name it does not know ends the build."""
import re
from decimal import ROUND_CEILING, ROUND_FLOOR
from pathlib import Path

import yaml

FILE = Path(__file__).resolve().parents[2] / "openapi" / "footwell-v1.yaml"
OPTIONS = {"format", "field", "workings", "errors", "further_entries", "lang"}


class UnknownName(Exception):
    """A workbook asks for something that the contract does not have."""


class Contract:
    def __init__(self, file=FILE):
        with open(file, encoding="utf-8") as text:
            self.document = yaml.load(text, Loader=getattr(yaml, "CSafeLoader", yaml.SafeLoader))

    def path(self, path):
        """A path that is there to be asked with GET."""
        self.get(path)
        return path

    def get(self, path):
        """The GET of a path such as /v1/sound-level."""
        try:
            return self.document["paths"][path]["get"]
        except KeyError:
            raise UnknownName(f"the contract has no GET {path}") from None

    def parameter(self, calculation, name):
        """A parameter of a calculation; an index of a repeated group, or a star for all, counts as its first."""
        wanted = re.sub(r"\.(\d+|\*)(?=\.|$)", ".0", name)
        for parameter in self._parameters(calculation):
            if parameter["name"] == wanted:
                return parameter
        raise UnknownName(f"{calculation} has no parameter {name}")

    def numeric(self, calculation, name):
        return self.parameter(calculation, name)["schema"].get("type") in ("number", "integer")

    def required(self, calculation):
        return [p["name"] for p in self._parameters(calculation) if p.get("required")]

    def _parameters(self, calculation):
        """Those of a GET; the ones that all share stand apart."""
        for parameter in self.get("/v1/" + calculation)["parameters"]:
            shared = parameter.get("$ref", "").rsplit("/", 1)[-1]
            yield self.document["components"]["parameters"][shared] if shared else parameter

    def choices(self, calculation, name):
        return self.parameter(calculation, name)["schema"].get("enum", [])

    def choice(self, calculation, name, value):
        """A value of an enumeration, if it is one."""
        if value not in self.choices(calculation, name):
            raise UnknownName(f"{name} of {calculation} cannot be {value}")
        return value

    def help(self, calculation, name, words, units):
        """What a person should know who types this parameter, its figures as they are read. The contract explains it in English alone."""
        parameter = self.parameter(calculation, name)
        schema = parameter["schema"]
        told = [units.described(name, parameter["description"])] if words.of_contract else []
        if "minimum" in schema and "maximum" in schema:
            least, most = units.told(name, schema["minimum"], ROUND_CEILING), units.told(name, schema["maximum"], ROUND_FLOOR)
            told.append(words.text("From {least} to {most}").format(least=f"{least:.10g}", most=f"{most:.10g}{units.behind(name)}"))
        if "default" in schema:
            told.append(words.text("If left out: {value}").format(value=f"{self.entered(units.told(name, schema['default']), words)}{units.behind(name)}"))
        return "".join(f"{sentence}. " for sentence in told).strip()

    @staticmethod
    def entered(value, words):
        """A value as a person enters it."""
        if isinstance(value, (bool, str)):
            return words.code(str(value).lower())
        return value

    def key(self, calculation, path):
        """The name that a part of an answer starts with, once it is sure that it has that part."""
        self.result(calculation, path)
        return path.rsplit(".", 1)[-1]

    def result(self, calculation, path):
        """The schema of a part of an answer by its dotted path in the result; lists are passed through."""
        here = self._schema(calculation)["properties"]["result"]
        for name in path.split("."):
            here = self._resolve(here)
            here = self._resolve(here["items"]) if here.get("type") == "array" else here
            if name not in here.get("properties", {}):
                raise UnknownName(f"the result of {calculation} has no {path}")
            here = here["properties"][name]
        return here

    def searchable(self, calculation, path):
        """The name a search of the answer's text finds first, once it is sure that it finds the right one."""
        name = self.key(calculation, path)
        answer = self._schema(calculation)
        places = [place for place in self._paths(answer, "") if place.rsplit(".", 1)[-1] == name]
        required = path in self._resolve(answer["properties"]["result"]).get("required", [])
        if len(places) > 1 and not (required and places[0] == "result." + path):
            raise UnknownName(f"{name} stands at several places of {calculation}: {', '.join(places)}")
        return name

    def _schema(self, calculation):
        content = self.get("/v1/" + calculation)["responses"]["200"]["content"]
        return self._resolve(content["application/json"]["schema"])

    def _resolve(self, schema):
        while "allOf" in schema or "$ref" in schema:
            schema = schema["allOf"][0] if "allOf" in schema else \
                self.document["components"]["schemas"][schema["$ref"].rsplit("/", 1)[1]]
        return schema

    def _paths(self, schema, prefix):
        schema = self._resolve(schema)
        if "items" in schema:
            yield from self._paths(schema["items"], prefix)
        for name, part in schema.get("properties", {}).items():
            yield prefix + name
            yield from self._paths(part, prefix + name + ".")


UNITS = {"ohm": "Ω", "w": "W", "v": "V", "a": "A", "db": "dB", "db_spl": "dB SPL", "dba": "dBA", "hz": "Hz", "m": "m",
         "mm": "mm", "mm2": "mm²", "cm2": "cm²", "cm3": "cm³", "g": "g", "ms": "ms", "c": "°C", "h": "h", "octaves": "octaves"}


def unit(name):
    """The unit that a field's name ends in."""
    words = name.rsplit(".", 1)[-1].split("_")
    for length in (2, 1):
        if len(words) > length and "_".join(words[-length:]) in UNITS:
            return UNITS["_".join(words[-length:])]
    return ""
