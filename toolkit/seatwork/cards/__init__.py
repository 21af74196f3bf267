"""Printed matter: worksheets on paper, feedback, cards for the machine."""
