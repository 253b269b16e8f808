"""Places in C++ source where one thing can be changed, found by tokens alone.

The source is formatted, so an operator with blanks around it is an operator and a bracket without is a template's.
"""
import re

TOKEN = re.compile(r"""
    (?P<comment>//[^\n]*|/\*.*?\*/)
  | (?P<raw>R"(?P<mark>[^(\s]*)\(.*?\)(?P=mark)")
  | (?P<string>"(?:\\.|[^"\\\n])*")
  | (?P<char>'(?:\\.|[^'\\\n])+')
  | (?P<number>\b(?:0x[0-9a-fA-F']+|\d[\d']*(?:\.\d+)?(?:e-?\d+)?)[uUlLzf]*\b)
  | (?P<word>[A-Za-z_]\w*)
  | (?P<space>\s+)
  | (?P<operator><=>|==|!=|<=|>=|&&|\|\||->|::|\+\+|--|\+=|-=|<<|>>|.)
""", re.X | re.S)

COMPARISONS = {"==": "!=", "!=": "==", "<": "<=", "<=": "<", ">": ">=", ">=": ">"}
OTHERS = {"&&": "||", "||": "&&", "+": "-", "-": "+"}
# Lower binds looser; an operand ends at anything that binds no tighter.
PRECEDENCE = {"||": 1, "&&": 2, "==": 4, "!=": 4, "<": 5, "<=": 5, ">": 5, ">=": 5, "<<": 6, ">>": 6, "+": 7, "-": 7}
STOPS = {",", ";", "{", "}", "?", ":", "=", "+=", "-=", "return", "case", "else", "if", "while", "for", "co_return"}
OPEN, CLOSE = {"(": ")", "[": "]"}, {")": "(", "]": "["}


class Token:
    def __init__(self, kind, text, start):
        self.kind, self.text, self.start, self.end = kind, text, start, start + len(text)


class Site:
    """`text[start:end]` becomes `mutated`; a statement is switched by an if, an expression by a choice."""

    def __init__(self, start, end, mutated, what, statement=False):
        self.start, self.end, self.mutated, self.what, self.statement = start, end, mutated, what, statement
        self.number = 0


def tokens_of(source):
    out = []
    for match in TOKEN.finditer(source):
        kind = match.lastgroup if match.lastgroup != "mark" else "raw"
        if kind in ("comment", "space"):
            continue
        line = source[source.rfind("\n", 0, match.start()) + 1:match.start()].lstrip()
        if line.startswith("#"):
            continue
        out.append(Token(kind, match.group(), match.start()))
    return out


def spaced(source, token):
    return source[token.start - 1:token.start].isspace() and source[token.end:token.end + 1].isspace()


def is_operator(source, token):
    return token.kind == "operator" and token.text in PRECEDENCE and spaced(source, token)


def left_of(source, tokens, at, level):
    depth, i = 0, at - 1
    while i >= 0:
        token = tokens[i]
        if token.text in CLOSE:
            depth += 1
        elif token.text in OPEN:
            if depth == 0:
                break
            depth -= 1
        elif depth == 0 and (token.text in STOPS or is_operator(source, token) and PRECEDENCE[token.text] < level):
            break
        i -= 1
    return i + 1


def right_of(source, tokens, at, level):
    depth, i = 0, at + 1
    while i < len(tokens):
        token = tokens[i]
        if token.text in OPEN:
            depth += 1
        elif token.text in CLOSE:
            if depth == 0:
                break
            depth -= 1
        elif depth == 0 and (token.text in STOPS or is_operator(source, token) and PRECEDENCE[token.text] <= level):
            break
        i += 1
    return i - 1


def closing(tokens, at):
    depth = 0
    for i in range(at, len(tokens)):
        if tokens[i].text in OPEN:
            depth += 1
        elif tokens[i].text in CLOSE:
            depth -= 1
            if depth == 0:
                return i
    return len(tokens) - 1


def plain(text):
    """Can it stand twice, on one line?"""
    return text.strip() and "//" not in text and "[&" not in text and "[=" not in text and "{" not in text and ";" not in text


def operator_sites(source, tokens):
    for i, token in enumerate(tokens):
        if token.text == "!" and not spaced(source, token) and token.kind == "operator":
            end = i + 1
            while end < len(tokens) and tokens[end].text in ("*", "!"):
                end += 1
            while end + 1 < len(tokens):
                following = tokens[end + 1].text
                if tokens[end].text == "(" or following in ("(", "["):
                    end = closing(tokens, end if tokens[end].text == "(" else end + 1)
                    if tokens[end + 1].text not in (".", "->"):
                        break
                elif following in (".", "->", "::") or tokens[end].text in (".", "->", "::"):
                    end += 1
                elif following == "<" and not spaced(source, tokens[end + 1]):
                    while tokens[end].text != ">":
                        end += 1
                else:
                    break
            operand = source[tokens[i + 1].start:tokens[end].end]
            if plain(operand):
                yield Site(token.start, tokens[end].end, f"static_cast<bool>({operand})", "! left out")
            continue
        if not is_operator(source, token) or token.text in ("<<", ">>"):
            continue
        first, last = left_of(source, tokens, i, PRECEDENCE[token.text]), right_of(source, tokens, i, PRECEDENCE[token.text])
        if first >= i or last <= i:
            continue
        start, end = tokens[first].start, tokens[last].end
        left, right = source[start:token.start], source[token.end:end]
        if not plain(left) or not plain(right):
            continue
        if token.text in "+-" and '"' in left + right:  # texts are put together, and cannot be taken apart
            continue
        swaps = [OTHERS.get(token.text) or COMPARISONS[token.text]]
        if token.text in ("<", "<=", ">", ">="):
            swaps.append({"<": ">=", "<=": ">", ">": "<=", ">=": "<"}[token.text])
        for swap in swaps:
            yield Site(start, end, f"{left}{swap}{right}", f"{token.text} becomes {swap}")


def constant_sites(source, tokens):
    for i, token in enumerate(tokens):
        if token.kind != "number" or "x" in token.text:
            continue
        if i and tokens[i - 1].text in ("<", "[", "case", "operator"):
            continue
        suffix = re.search(r"[uUlLzf]*$", token.text).group()
        body = token.text[:len(token.text) - len(suffix)].replace("'", "")
        if "." in body or "e" in body:
            changes = [f"({body} * 2)", f"({body} / 2)"]
        else:
            changes = [f"{int(body) + 1}{suffix}"] + ([f"{int(body) - 1}{suffix}"] if int(body) > 0 else [])
        for change in changes:
            yield Site(token.start, token.end, change, f"{token.text} becomes {change}")


def condition_sites(source, tokens):
    for i, token in enumerate(tokens[:-1]):
        if token.text not in ("if", "while") or tokens[i + 1].text != "(":
            continue
        end = closing(tokens, i + 1)
        inner = source[tokens[i + 1].end:tokens[end].start]
        if not plain(inner) or re.search(r"[\w>&*] = ", inner):
            continue
        start, stop = tokens[i + 1].end, tokens[end].start
        yield Site(start, stop, "false", "never true")
        if token.text == "if":
            yield Site(start, stop, "true", "always true")


def statement_sites(source, tokens):
    for i, token in enumerate(tokens):
        end = i
        while end < len(tokens) and tokens[end].text not in (";", "{", "}"):
            end += 1
        if end >= len(tokens) or tokens[end].text != ";":
            continue
        text = source[token.start:tokens[end].end]
        before = tokens[i - 1].text if i else ";"
        if "//" in text or "[&" in text:
            continue
        if token.text == "return" and text != "return;" and before != "constexpr":
            yield Site(token.start, tokens[end].end, "return {};", "returns {}", True)
        elif before in (";", "{", "}", ")", "else") and token.kind == "word":
            call = re.match(r"^(CW_CHECK|[\w.\->:]+)\(.*\);$", text, re.S)
            assigned = re.match(r"^[\w.\->]+(\[[^\]]*\])? (=|\+=|-=) .*;$", text, re.S)
            if (call or assigned) and token.text not in ("if", "for", "while", "switch", "CW_TRY", "static_assert", "return"):
                yield Site(token.start, tokens[end].end, ";", "left out", True)


def sites_of(source):
    tokens = tokens_of(source)
    for finder in (operator_sites, constant_sites, condition_sites, statement_sites):
        yield from finder(source, tokens)


def switched(source, sites):
    """The source with all those mutants in it, each behind its number. Lines stay where they are."""
    ordered = sorted(sites, key=lambda s: (s.start, -s.end))
    kept, open_ends = [], []
    for site in ordered:  # ranges that cross are left out
        while open_ends and open_ends[-1] <= site.start:
            open_ends.pop()
        if open_ends and site.end > open_ends[-1]:
            continue
        kept.append(site)
        if not open_ends or open_ends[-1] != site.end or site.start != site.end:
            open_ends.append(site.end)

    def render(start, end, among):
        out, at, i = "", start, 0
        while i < len(among):
            first = among[i]
            same = [s for s in among[i:] if (s.start, s.end) == (first.start, first.end)]
            inside = [s for s in among[i:] if s.start < first.end and (s.start, s.end) != (first.start, first.end)]
            inner = render(first.start, first.end, inside)
            for site in same:
                changed = " ".join(site.mutated.split("\n"))
                if site.statement:
                    inner = f"{{ if (cw_mutant({site.number})) {{ {changed} }} else {{ {inner} }} }}"
                elif changed in ("true", "false"):
                    inner = f"(cw_mutant({site.number}) ? {changed} : static_cast<bool>({inner}))"
                else:
                    inner = f"(cw_mutant({site.number}) ? ({changed}) : ({inner}))"
            out += source[at:first.start] + inner
            at = first.end
            i += len(same) + len(inside)
        return out + source[at:end]

    return render(0, len(source), kept), kept
